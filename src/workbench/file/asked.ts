/** What the page asks of the worker that holds the file, and what it hears. */
import type { Refusal } from "../../sheet/refusal";
import type { Edit, StructuralAct } from "../../xlsx";
import type { FileArrays, OpenedFile } from "./opened-file";

export interface Saved {
  readonly bytes: Uint8Array;
  /** Of the file as saved. */
  readonly arrays: FileArrays;
}

/** The file as it is after an act, or before it; not the open one until it is shown. */
export interface Restructured {
  readonly opened: OpenedFile;
  /** Bytes. */
  readonly size: number;
  /** Formulas that refer to what is no more, and referred to something. */
  readonly lost: number;
  /** Formulas that are told by a text which cells they read. */
  readonly byText: number;
  /** How many acts can be taken back, and done again, from there. */
  readonly counts: { readonly back: number; readonly forth: number };
}

export interface Answers {
  open: OpenedFile;
  act: Restructured;
  back: Restructured;
  forth: Restructured;
  took: undefined;
  save: Saved;
  try: Saved;
  keep: undefined;
  new: Uint8Array;
}

export type Asked =
  | { readonly ask: "open"; readonly bytes: Uint8Array }
  /** The file with edits made: what was opened stays as it is. */
  | { readonly ask: "save"; readonly edits: readonly Edit[] }
  /** The file of a logbook of somebody's own, empty: nothing that is open is touched. */
  | { readonly ask: "new" }
  /** The same, and what was saved last stays what was saved last. */
  | { readonly ask: "try"; readonly edits: readonly Edit[] }
  /** The file with edits made, and then rows, columns or sheets other than they were. */
  | { readonly ask: "act"; readonly edits: readonly Edit[]; readonly act: StructuralAct }
  /** The file before the last act; or the one that was gone back from. */
  | { readonly ask: "back" | "forth"; readonly edits: readonly Edit[] }
  /** What came of one of these is now the open file. */
  | { readonly ask: "took" }
  /** What was saved last is now the open file. */
  | { readonly ask: "keep" };

export type Answer<Ask extends keyof Answers> = { readonly is: Answers[Ask] } | Refusal;

export interface Letter<T> {
  readonly number: number;
  readonly holds: T;
}
