/** A what-if table begun from the batch in hand: its acid, its lye, and half, once and twice its amount. */
import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { oilNamed } from "../../core/reference/oils";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import { isHeldBack } from "../batch/acid-worth";
import { type Draft as BatchDraft, newDraft as newBatch } from "../batch/draft";
import { mixedAcid } from "../batch/mixed-acid";
import type { Seen } from "../batch/seen";
import { viewOf } from "../batch/view-of";
import { lotMark } from "../lots/lot-mark";
import { digits } from "../widgets/shown-number";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import type { Draft } from "./draft";

/** Digits of a charge that was given in another way. */
const chargeDigits = 4;

const filled = (typed: Readonly<Record<string, string | undefined>>): Draft["typed"] =>
  Object.fromEntries(Object.entries(typed).filter(([, text]) => (text ?? "") !== ""));

/**
 * The acid value of what goes into the vessel, where no lot has it: of a mix, or of a lot whose titrant
 * was taken as pure. Not while Batch itself shows no dose for it.
 */
function ownAcid(seen: Seen): string | undefined {
  const { mix } = seen.working;
  if (mix === undefined || isProblem(mix) || isHeldBack(seen)) return undefined;
  const [only, ...others] = mix.lots;
  return others.length === 0 && only?.acidValue.eq(mix.acidValue) === true
    ? undefined
    : withMark(mixedAcid(seen) ?? "", seen.mark);
}

const isUntouched = (batch: BatchDraft): boolean =>
  JSON.stringify(batch) === JSON.stringify(newBatch());

/** @param lots on record, the latest first: it is the one in hand where the batch has none */
export function fromBatch(
  draft: Draft,
  batch: BatchDraft,
  lots: readonly RecordedLot[],
  mark: DecimalMark,
): Draft {
  const seen = viewOf(batch, mark, lots);
  const { figures, working } = seen;
  const acid = ownAcid(seen);
  const amount = figures.value("amount");
  const { charge } = working;
  const latest = lots.find(({ acidValue }) => acidValue !== undefined && acidValue > 0);
  const marks = batch.lots.map(({ lot }) => lot);
  const chosen = marks.length > 0 || latest === undefined ? marks : [lotMark(latest)];
  const sizes =
    amount && [amount.div(exact(2)), amount, amount.times(exact(2))].map((size) => digits(size, 6));
  return {
    ...draft,
    typed: {
      ...draft.typed,
      ...filled({
        acid,
        assay: batch.typed.assay,
        limit: batch.typed.limit,
        temperature: batch.typed.temperature,
        charge:
          charge === undefined || isProblem(charge)
            ? undefined
            : withMark(digits(charge, chargeDigits), mark),
      }),
    },
    picked: {
      ...draft.picked,
      // a batch that nobody has begun says nothing: what My bench said stays
      ...(isUntouched(batch) ? {} : { base: batch.picked.base, unit: batch.picked.unit }),
      // as its volume is reckoned in Batch
      ...(marks.length > 0 ? { oil: oilNamed(working.oil.name)?.name ?? "" } : {}),
      ...(acid === undefined ? {} : { by: "acid", acidIn: "value" }),
      acidFrom: acid !== undefined ? "typed" : chosen.length > 0 ? "lot" : draft.picked.acidFrom,
    },
    lists: {
      ...draft.lists,
      ...(sizes ? { sizes: withMark(sizes.join(" "), mark) } : {}),
      ...(chosen.length > 0 ? { acid: acid ?? "" } : {}),
    },
    lots: acid === undefined ? chosen : [],
    lot: acid === undefined ? (chosen[0] ?? draft.lot) : draft.lot,
  };
}
