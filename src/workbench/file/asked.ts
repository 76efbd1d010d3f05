/** What the page asks of the worker that holds the file, and what it hears. */
import type { Refusal } from "../../sheet/refusal";
import type { Edit, StructuralAct } from "../../xlsx";
import type { Step } from "../acts/act-history";
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
  /** What it was that was done, taken back or done again. */
  readonly step: Step;
  /** How many steps can be taken back, and done again, from there. */
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
  forget: undefined;
  new: Uint8Array;
}

/** What was typed since the file was shown, as a step of its own. */
export interface Typed {
  readonly edits: readonly Edit[];
  /** The results that the file lacked when it was shown, after an act before this one. */
  readonly settled: readonly Edit[];
  /** Cells that were changed since the file was shown; undefined where that is no step. */
  readonly cells: number | undefined;
}

/** What was typed since the file was shown, and taken back one by one: it can be done again. */
export interface Beyond {
  readonly edits: readonly Edit[];
  /** Cells that it changed; undefined where it comes to nothing. */
  readonly cells: number | undefined;
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
  | (Typed & {
      readonly ask: "act";
      readonly act: StructuralAct;
      /** What it does, in a sentence. */
      readonly says: string;
    })
  /** The file before the last step; or the one that was gone back from. */
  | (Typed & {
      readonly ask: "back" | "forth";
      readonly beyond: Beyond | undefined;
    })
  /** What came of one of these is now the open file. */
  | { readonly ask: "took" }
  /** What was saved last is now the open file. */
  | { readonly ask: "keep" }
  /** Nothing is gone back to any more that was before now. */
  | { readonly ask: "forget" };

export type Answer<Ask extends keyof Answers> = { readonly is: Answers[Ask] } | Refusal;

export interface Letter<T> {
  readonly number: number;
  readonly holds: T;
}
