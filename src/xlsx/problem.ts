/**
 * What can be wrong with a workbook file, or with an edit asked of it. As everywhere, a problem is a
 * value, and its sentence stands in wording.ts. Inside this folder it travels as an exception, since
 * the XML reader calls back; the doors (open.ts, patch.ts) turn it into a value.
 */
import type { ShiftTrouble } from "./structure/lines/trouble";

export type FileProblemFields =
  // the file
  | { code: "not-a-workbook" }
  | { code: "encrypted" }
  | { code: "old-format" }
  | { code: "binary-format" }
  | { code: "strict-format" }
  | { code: "other-format"; found: string }
  | { code: "damaged"; part: string; detail: string }
  | { code: "unsafe-name"; name: string }
  | { code: "repeated-name"; name: string }
  | { code: "too-large" }
  | { code: "too-many-cells" }
  | { code: "packed-to-harm"; part: string }
  | { code: "declares-entities"; part: string }
  | { code: "other-encoding"; part: string; encoding: string }
  // an edit
  | { code: "no-sheet"; name: string }
  | { code: "no-cells"; sheet: string }
  | { code: "outside-sheet"; cell: string }
  | { code: "rows-out-of-order"; sheet: string }
  | { code: "in-merged-cells"; cell: string; area: string }
  | { code: "in-array"; cell: string; area: string }
  | { code: "not-empty"; cell: string; wanted: string }
  | { code: "no-formula"; cell: string }
  | { code: "broken-formula"; cell: string; sentence: string }
  | { code: "not-as-meant"; place: string }
  | { code: "not-read-back" }
  | { code: "not-a-number"; cell: string }
  | { code: "text-too-long"; cell: string }
  | { code: "not-a-date"; cell: string; given: string }
  | { code: "bad-name"; kind: "sheet" | "table" | "defined"; name: string }
  | { code: "name-taken"; name: string }
  | { code: "no-table"; name: string }
  | { code: "table-area"; table: string; area: string; trouble: TableTrouble }
  | { code: "bad-heading"; table: string; heading: string; trouble: HeadingTrouble }
  | { code: "heading-cell"; cell: string; table: string }
  | { code: "bad-length"; table: string; given: number; needed: number }
  | { code: "bad-width"; given: number }
  | { code: "bad-height"; given: number }
  | { code: "note-there"; cell: string }
  | { code: "choice-there"; cell: string }
  | { code: "filter-there"; sheet: string; area: string }
  | { code: "choice-too-long"; cell: string }
  | { code: "frozen-already"; sheet: string }
  // rows, columns and sheets
  | { code: "sheets-locked" }
  | { code: "last-sheet"; sheet: string }
  | { code: "not-taken-along"; sheet: string; what: string }
  | { code: "ends-a-range"; sheet: string }
  | { code: "unknown-reference"; part: string }
  | { code: "unreadable-formula" }
  | { code: "too-many-styles" }
  // rows and columns put in or taken out
  | { code: "cannot-shift"; sheet: string; place: string; trouble: ShiftTrouble }
  | { code: "failed"; detail: string };

export type TableTrouble =
  | "moved"
  | "smaller"
  | "has-totals"
  | "filled-from-outside"
  | "overlaps-table"
  | "too-small"
  | "merged"
  | "no-headings";
export type HeadingTrouble = "empty" | "repeated" | "not-text" | "too-long";

export class FileProblem {
  constructor(readonly fields: FileProblemFields) {}
}

export const isFileProblem = (value: unknown): value is FileProblem => value instanceof FileProblem;

class Refused extends Error {
  constructor(readonly problem: FileProblem) {
    super(problem.fields.code);
  }
}

/** Stop, and let the door answer with this problem. */
export function refuse(fields: FileProblemFields): never {
  throw new Refused(new FileProblem(fields));
}

/** What some work comes to, or the problem that stopped it. Nothing it throws gets out. */
export function answer<T>(work: () => T): T | FileProblem {
  try {
    return work();
  } catch (stopped) {
    if (stopped instanceof Refused) return stopped.problem;
    const detail = stopped instanceof Error ? stopped.message : "no reason given";
    return new FileProblem({ code: "failed", detail });
  }
}
