/** A container of lye as a row of `LyeLots`. */
import type { Exact } from "../../core/exact/exact";
import type { Base } from "../../core/reference/bases";

export interface LyeLotRecord {
  /** As its container is marked. */
  readonly lot: string;
  readonly base: Base["name"];
  /** Percent, of its label. */
  readonly assay: Exact;
  /** Days since 30 December 1899, as a spreadsheet counts them. */
  readonly date: number;
  readonly note: string;
}
