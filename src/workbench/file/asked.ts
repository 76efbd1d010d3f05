/** What the page asks of the worker that holds the file, and what it hears. */
import type { Refusal } from "../../sheet/refusal";
import type { Edit } from "../../xlsx";
import type { FileArrays, OpenedFile } from "./opened-file";

export interface Saved {
  readonly bytes: Uint8Array;
  /** Of the file as saved. */
  readonly arrays: FileArrays;
}

export interface Answers {
  open: OpenedFile;
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
  /** What was saved last is now the open file. */
  | { readonly ask: "keep" };

export type Answer<Ask extends keyof Answers> = { readonly is: Answers[Ask] } | Refusal;

export interface Letter<T> {
  readonly number: number;
  readonly holds: T;
}
