/** The acid of the mix in hand where a lot of it is not worth a dose yet: a table of it says so. */
import { type Exact, exact } from "../../core/exact/exact";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import { notYet } from "../batch/acid-worth";
import type { Draft as BatchDraft } from "../batch/draft";
import { mixedAcid } from "../batch/mixed-acid";
import { viewOf } from "../batch/view-of";
import type { DecimalMark } from "../widgets/typed-number";

export interface MixInDoubt {
  /** mg KOH/g, as this task is told it. */
  readonly acid: Exact;
  readonly why: string;
}

export function mixInDoubt(
  batch: BatchDraft | undefined,
  lots: readonly RecordedLot[] | undefined,
  mark: DecimalMark,
): MixInDoubt | undefined {
  if (batch === undefined || lots === undefined) return undefined;
  const seen = viewOf(batch, mark, lots);
  const acid = mixedAcid(seen);
  const why = notYet(seen);
  return acid === undefined || why === "" ? undefined : { acid: exact(acid), why };
}
