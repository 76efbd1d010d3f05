/** What was done to make a copy, as values; the sentences are in report-words.ts. */
export interface Left {
  /** Log!C2, or what else it is: the name doseToday. */
  readonly cell: string;
  /** Completes "Left as it is: ...", or "Only in part: ...". */
  readonly reason: string;
  readonly isInPart: boolean;
}

export interface ShareReport {
  readonly kind: "partner" | "numbers";
  /** Formulas that were written in plain functions; in a numbers copy, formulas that were dropped. */
  readonly formulas: number;
  /** Sentences that are kept as they were, without a formula. */
  readonly sentences: number;
  readonly left: readonly Left[];
  /** The sheets in which anything was changed. */
  readonly sheets: readonly string[];
  readonly helperCells: number;
  /** The sheets that were added; undefined where none was needed. */
  readonly workings: string | undefined;
  readonly readMe: string | undefined;
  /** Columns of tables that a new row no longer fills by itself. */
  readonly unfilled: readonly string[];
  /** Panes of add-ins that the file opened. */
  readonly webExtensions: number;
}

/** The report while it grows. */
export class Tally {
  formulas = 0;
  sentences = 0;
  readonly left: Left[] = [];
  readonly sheets = new Set<string>();
  readonly unfilled: string[] = [];
  /** The functions of ours that were called. */
  readonly ids = new Set<string>();

  /** Cells that formulas outside tables go by, by sheet. */
  readonly inputs = new Map<string, string[]>();

  leave(cell: string, reason: string, isInPart = false): void {
    this.left.push({ cell, reason, isInPart });
  }
}
