/** Which rows a column's filter lets through; one that is not understood, every row that it let through before. */
import type { Criterion } from "../../xlsx";
import type { GivenCell } from "../engine/cells";

export function lets(criterion: Criterion, value: GivenCell, shown: string): boolean {
  if (criterion.kind === "other") return true;
  if (criterion.kind === "words") return criterion.words.includes(shown);
  const { atLeast = -Infinity, atMost = Infinity } = criterion;
  return typeof value === "number" && atLeast <= value && value <= atMost;
}
