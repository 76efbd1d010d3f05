/** Why a host did nothing. */
export type FaultCode =
  /** The workbook takes no changes. */
  | "read-only"
  | "sheet-protected"
  /** No sheet can be added. */
  | "workbook-protected"
  | "table-filtered"
  | "target-not-empty"
  | "name-taken"
  /** Somebody is typing in a cell. */
  | "being-edited"
  /** It has too much else to do. */
  | "busy"
  /** More at once than it takes, or hands over. */
  | "too-large"
  /** It would not keep what undoing needs. */
  | "not-undoable"
  /** No answer in time: whether it was done is not known. */
  | "no-answer"
  /** Something failed half-way, and what was done till then could not be taken back. */
  | "half-done"
  /** This program cannot do it. */
  | "not-offered"
  | "failed";

/**
 * Why a verb did nothing. Whatever the fault, the workbook is as it was before; only after
 * "no-answer" and "half-done" to a write must one look.
 */
export interface Fault {
  readonly kind: "fault";
  readonly code: FaultCode;
  /** What it concerns: a sheet, a table, an address; "" when the host does not say. */
  readonly about: string;
}

export const fault = (code: FaultCode, about = ""): Fault => ({ kind: "fault", code, about });

export const isFault = (value: unknown): value is Fault =>
  typeof value === "object" && value !== null && (value as { kind?: unknown }).kind === "fault";
