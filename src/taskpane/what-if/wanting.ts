/** Figures a table needs: each is there, or wanted in the words of its field. */
import type { Exact } from "../../core/exact/exact";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { Draft } from "./draft";
import type { StepId } from "./what-if";
import { numberFields, type NumberFieldId } from "./fields";
import { type Figures, listFactOf } from "./figures";
import type { MixInDoubt } from "./mix-in-doubt";

export interface Want {
  readonly step: StepId;
  readonly sentence: string;
}

export interface Bench {
  readonly draft: Draft;
  readonly figures: Figures;
  /** Empty when there is no logbook of titrations; undefined until that is known. */
  readonly lots: readonly RecordedLot[] | undefined;
  /** The mix of the batch in hand, where it is not worth a dose yet. */
  readonly mix: MixInDoubt | undefined;
}

export type Wanting = (step: StepId, sentence: string) => undefined;

/** A figure that is needed; what is wrong with it is wanted in the words of its field. */
export function needed(
  bench: Bench,
  step: StepId,
  field: NumberFieldId,
  want: Wanting,
): Exact | undefined {
  const found = bench.figures.judged(field);
  if (found.kind === "figure") return found.value;
  const { label } = numberFields[field];
  const of = /^(assay|charge)(KOH|NaOH|KOCH3|NaOCH3)$/.exec(field)?.[2];
  return want(
    step,
    found.kind === "wrong" ? found.sentence : `Fill in ${label}${of ? ` of ${of}` : ""}.`,
  );
}

export function optional(
  bench: Bench,
  step: StepId,
  field: NumberFieldId,
  want: Wanting,
): Exact | undefined {
  const found = bench.figures.judged(field);
  if (found.kind === "wrong") want(step, found.sentence);
  return found.kind === "figure" ? found.value : undefined;
}

export function neededList(
  bench: Bench,
  id: "acid" | "ffa" | "assay" | "charge",
  want: Wanting,
): readonly Exact[] {
  const found = bench.figures.list(id);
  if (found.kind === "figures") return found.values;
  const { label } = listFactOf(bench.draft, id);
  want("compare", found.kind === "wrong" ? found.sentence : `Fill in ${label}.`);
  return [];
}
