/** A batch begun from a lot that was recorded just now: nothing that is under way is lost. */
import { baseNamed } from "../../core/reference/bases";
import type { BenchValues } from "../../workbook/tables/bench";
import { batchFrom } from "../bench/begin-from";
import type { Given } from "../open-task";
import { intoGaps } from "../stepped/entered";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { type Draft, newDraft } from "./draft";
import { reduce } from "./reducer";

/** The batch after this one: vessel and lye stay, and My bench fills what is empty. */
export function nextBatch(now: Draft | undefined, bench: BenchValues, mark: DecimalMark): Draft {
  const fresh = newDraft(now);
  return reduce(fresh, intoGaps(fresh, batchFrom(bench, mark)));
}

const isUntouched = (draft: Draft): boolean => JSON.stringify(draft) === JSON.stringify(newDraft());

/** A column of What if: its base, assay, pure charge and limit; its lot alone where it has one. */
function withGiven(
  draft: Draft,
  { lot, base, assay, charge, limit }: Given,
  mark: DecimalMark,
): Draft {
  const typed = { assay, chargePercent: charge, limit };
  return {
    ...reduce(draft, {
      do: "begin-with",
      typed: Object.fromEntries(
        Object.entries(typed).flatMap(([id, text]) => (text ? [[id, withMark(text, mark)]] : [])),
      ),
      picked: {
        base: baseNamed(base ?? "")?.name ?? draft.picked.base,
        chargeUnit: "%",
        chargeIs: "pure",
      },
    }),
    lots: lot === undefined ? draft.lots : [],
  };
}

const isItsMix = (given: Given, acid: string | undefined): boolean =>
  acid !== undefined && given.acid === acid;

/** Its lots, and how they are mixed. */
const mixIn = ({ lots, picked, typed }: Draft): Pick<Draft, "lots" | "picked" | "typed"> => ({
  lots,
  picked,
  typed,
});

/**
 * The lot goes into the batch under way; where that is recorded already, into the next one.
 * @param acid of the mix in `now`, as What if was told it: a column with that acid is of the same lots
 */
export function ofLot(
  now: Draft | undefined,
  lot: string,
  bench: BenchValues,
  mark: DecimalMark,
  given: Given = {},
  acid?: string,
): Draft {
  const begun =
    now === undefined || isUntouched(now)
      ? reduce(newDraft(), batchFrom(bench, mark))
      : now.isRecorded
        ? { ...nextBatch(now, bench, mark), ...(isItsMix(given, acid) ? mixIn(now) : {}) }
        : now;
  const withLye = given.base === undefined ? begun : withGiven(begun, given, mark);
  if (lot === "") return { ...withLye, step: "oil" };
  return { ...reduce(withLye, { do: "choose-lot", lot, isChosen: true }), step: "oil" };
}
