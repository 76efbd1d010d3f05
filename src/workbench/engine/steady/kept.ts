/**
 * What the embedded engine keeps of formulas it has read: by their text alone, whatever workbook they
 * stood in and whatever a name in them meant then, and longer texts by a number that two may have in
 * common. Here they are kept by their whole text, and forgotten when a workbook is opened or a name or a
 * table changes.
 */
import { FORMULA_REF_TO_ARRAY_CACHE } from "@univerjs/engine-formula";

interface Kept {
  set(text: string, read: unknown): void;
  clear(): void;
  _hash(text: string): string;
}

const all = new Set<Kept>();
let isDone = false;

/** Once for the page: all that the engine keeps is of one kind. */
export function keepByWholeText(): void {
  if (isDone) return;
  isDone = true;
  const kind = Object.getPrototypeOf(FORMULA_REF_TO_ARRAY_CACHE) as Kept;
  const keep = kind.set;
  kind._hash = (text) => text;
  kind.set = function (this: Kept, text: string, read: unknown): void {
    all.add(this);
    keep.call(this, text, read);
  };
}

export function forgetWhatWasRead(): void {
  for (const kept of all) kept.clear();
}
