/** Do the texts of two formulas say the same? Spreadsheets hand formulas back in a spelling of their own. */
import { isProblem } from "../../core/problem/problem";
import { readFormula } from "./read";
import { isSameMeaning } from "./same-meaning";

/** `table` is the table that the formulas stand in. */
export function isSameFormula(one: string, other: string, table: string): boolean {
  if (one === other) return true;
  const [left, right] = [readFormula(one), readFormula(other)];
  return !isProblem(left) && !isProblem(right) && isSameMeaning(left.tree, right.tree, table);
}
