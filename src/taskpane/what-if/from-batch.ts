/** A what-if table begun from the batch in hand: its lots, its lye, and half, once and twice its amount. */
import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { Draft as BatchDraft } from "../batch/draft";
import { viewOf } from "../batch/view-of";
import { lotMark } from "../lots/lot-ticks";
import { digits } from "../widgets/shown-number";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import type { Draft } from "./draft";

/** Digits of a charge that was given in another way. */
const chargeDigits = 4;

const filled = (typed: Readonly<Record<string, string | undefined>>): Draft["typed"] =>
  Object.fromEntries(Object.entries(typed).filter(([, text]) => (text ?? "") !== ""));

/** @param lots on record, the latest first: it is the one in hand where the batch has none */
export function fromBatch(
  draft: Draft,
  batch: BatchDraft,
  lots: readonly RecordedLot[],
  mark: DecimalMark,
): Draft {
  const { figures, working } = viewOf(batch, mark, lots);
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
      base: batch.picked.base,
      unit: batch.picked.unit,
      acidFrom: chosen.length > 0 ? "lot" : draft.picked.acidFrom,
    },
    lists: sizes ? { ...draft.lists, sizes: withMark(sizes.join(" "), mark) } : draft.lists,
    lots: chosen,
    lot: chosen[0] ?? draft.lot,
  };
}
