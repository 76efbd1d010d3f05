/** The selected cell, as this task needs it: plain values and a way to look up what it refers to. */
import type { Lookup } from "../../workbook/explain/explain";

export interface ShownCell {
  readonly sheet: string;
  /** L4 */
  readonly address: string;
  /** With its equals sign; "" when there is none. */
  readonly formula: string;
  /** As the sheet shows it; "" when empty. */
  readonly shown: string;
  /** The text it holds as put in; undefined for a figure, a formula, nothing. */
  readonly text?: string | undefined;
  /** The error it holds: #N/A; undefined where it holds none, or where nothing can be said of it. */
  readonly error?: string | undefined;
  /** What was written beside the cell, or beside its column's heading. */
  readonly note: string;
  /** Why it is not worked out here and shows what it came to before; a sentence. */
  readonly held?: string | undefined;
  /** Why its result of now is not saved; a sentence. */
  readonly doubt?: string | undefined;
  /** Set when the value was spilled here by another cell's formula. */
  readonly spilledFrom?: { readonly address: string; readonly formula: string } | undefined;
  readonly lookup: Lookup;
}
