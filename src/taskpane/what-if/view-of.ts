/** A draft seen whole: what was typed, what follows from it, what is wanted. Worked out, never kept. */
import type { RecordedLot } from "../../workbook/planning/read-lots";
import type { DecimalMark } from "../widgets/typed-number";
import type { Draft } from "./draft";
import { figuresOf } from "./figures";
import type { MixInDoubt } from "./mix-in-doubt";
import type { Bench } from "./wanting";
import { type Working, workingOf } from "./working";

export interface View extends Bench {
  readonly working: Working;
  readonly mark: DecimalMark;
}

export function viewOf(
  draft: Draft,
  mark: DecimalMark,
  lots: readonly RecordedLot[] | undefined,
  mix?: MixInDoubt,
): View {
  const bench = { draft, figures: figuresOf(draft, mark), lots, mix };
  return { ...bench, working: workingOf(bench), mark };
}
