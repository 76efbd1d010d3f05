/** Puts new text in place of parts of a formula, and leaves every other character as it was. */
import type { Span } from "./token";

export interface Replacement extends Span {
  readonly text: string;
}

/**
 * Replacements must not overlap; their order does not matter.
 * @example splice("=A1+B1", [{ start: 1, end: 3, text: "$A$1" }]) // "=$A$1+B1"
 */
export function splice(formula: string, replacements: readonly Replacement[]): string {
  let done = 0;
  let text = "";
  for (const each of [...replacements].sort((a, b) => a.start - b.start)) {
    if (each.start < done) throw new RangeError("replacements overlap");
    text += formula.slice(done, each.start) + each.text;
    done = each.end;
  }
  return text + formula.slice(done);
}
