/** What a sheet on paper is made of: cells in rows, rows in parts, a part beside or below another. */
import type { IStyleData } from "@univerjs/core";

export interface PrintedCell {
  readonly text: string;
  readonly isFigure: boolean;
  readonly style: IStyleData | undefined;
  readonly columns: number;
  readonly rows: number;
}

export interface PrintedRow {
  readonly height: number;
  /** Those that another covers are left out. */
  readonly cells: readonly PrintedCell[];
}

/** Columns that stand beside one another on a page. */
export interface PrintedPart {
  /** Pixels. */
  readonly widths: readonly number[];
  /** What stands above the rows that are repeated, once. */
  readonly before: readonly PrintedRow[];
  readonly above: readonly PrintedRow[];
  readonly rows: readonly PrintedRow[];
  /** Smaller again than the whole, where that brings it onto one page. */
  readonly scale?: number;
}
