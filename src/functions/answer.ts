/** Cells out: what the core found, as values a cell can hold. */
import { type Exact, isExact } from "../core/exact/exact";
import { type Outcome, isProblem, problem } from "../core/problem/problem";

/** What the core may answer: one value, or a table of them. */
export type Result = Exact | boolean | string;
export type ResultTable = readonly (readonly Result[])[];

export type CellValue = number | string | boolean;
/** One value, or rows of values that spill. */
export type Answer = CellValue | CellValue[][];

/** The nearest double, unrounded: rounding is for display. Beyond what a double holds: a problem. */
function toNumber(value: Exact): Outcome<number> {
  const double = value.toNumber();
  return Number.isFinite(double) ? double : problem({ code: "too-large-to-show" });
}

const toCell = (result: Result): Outcome<CellValue> =>
  isExact(result) ? toNumber(result) : result;

export function toCells(result: Result | ResultTable): Outcome<Answer> {
  if (!Array.isArray(result)) return toCell(result as Result);
  const rows: CellValue[][] = [];
  for (const row of result as ResultTable) {
    const cells: CellValue[] = [];
    for (const each of row) {
      const cell = toCell(each);
      if (isProblem(cell)) return cell;
      cells.push(cell);
    }
    rows.push(cells);
  }
  return rows;
}
