/** What stands in one column under its heading: kinds of cells, their figures, their formulas. */
import { heldCell, isHeld, type SheetCells } from "./sheet-cells";
import { dateFrom, isDateFormat } from "./typed-date";
import { figuresIn } from "../layouts/several-figures";
import { numberFrom, numberFromText, type Commas } from "./typed-number";

export interface ColumnFacts {
  /** Cells that hold anything. */
  readonly filled: number;
  readonly numbers: readonly number[];
  readonly dates: number;
  readonly texts: readonly string[];
  /** The first formula of the column; "" when all is typed. */
  readonly formula: string;
  readonly isPercentFormat: boolean;
  /** How many different values there are. */
  readonly different: number;
}

/** Rows looked at: enough to tell, few enough to be quick. */
const most = 200;

export function columnFacts(
  cells: SheetCells,
  column: number,
  firstRow: number,
  lastRow: number,
  commas: Commas,
): ColumnFacts {
  const numbers: number[] = [];
  const texts: string[] = [];
  const seen = new Set<string>();
  let filled = 0;
  let dates = 0;
  let formula = "";
  let percents = 0;
  for (let row = firstRow; row <= Math.min(lastRow, firstRow + most); row += 1) {
    const cell = heldCell(cells, row, column);
    if (!isHeld(cell)) continue;
    filled += 1;
    seen.add(JSON.stringify(cell.value));
    if (formula === "") formula = cell.formula;
    const isDate =
      dateFrom(cell.value, cell.format) !== undefined ||
      (cell.value === "" && isDateFormat(cell.format));
    const several = figuresIn(cell.value)?.[0];
    const number =
      several === undefined ? numberFrom(cell.value, commas) : numberFromText(several, "decimal");
    if (isDate) dates += 1;
    else if (number) {
      numbers.push(number.value);
      if (cell.format.includes("%")) percents += 1;
    } else if (typeof cell.value === "string" && cell.value.trim() !== "")
      texts.push(cell.value.trim());
  }
  return {
    filled,
    numbers,
    dates,
    texts,
    formula,
    isPercentFormat: percents > 0 && percents === numbers.length,
    different: seen.size,
  };
}

export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? NaN;
}
