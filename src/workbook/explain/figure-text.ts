/** Values as an explanation shows them: at most six significant digits, a true minus sign. */
import { type Exact, exact } from "../../core/exact/exact";
import { type Cell, isNotFilledIn } from "../../functions/cells/cell";
import { type Grid, readGrid } from "../../functions/cells/grid";

const digits = 6;
const longestText = 40;
const mostCells = 24;

/** 56.1053, 0.000123, −5. */
export const shownFigure = (value: number | Exact): string =>
  (typeof value === "number" ? exact(value) : value)
    .toSignificantDigits(digits)
    .toString()
    .replace("-", "−");

function shownCell(cell: Cell): string {
  switch (cell.kind) {
    case "number":
      return shownFigure(cell.value);
    case "text":
      return cell.text.length > longestText ? `${cell.text.slice(0, longestText)}…` : cell.text;
    case "boolean":
      return cell.value ? "TRUE" : "FALSE";
    case "error":
      return cell.error;
    case "unreadable":
      return "not a value";
    default:
      return "empty";
  }
}

/** Cells along a row are parted by commas, rows by semicolons. */
function shownRows({ cells, columns }: Grid): string {
  const shown = cells.slice(0, mostCells).map(shownCell);
  const isColumn = columns === 1;
  const text = shown
    .map(
      (cell, place) => (place === 0 ? "" : !isColumn && place % columns === 0 ? "; " : ", ") + cell,
    )
    .join("");
  return cells.length > mostCells ? `${text} … (${cells.length} cells)` : text;
}

/** What a cell or a range holds now. */
export function shownValues(raw: unknown): string {
  const grid = readGrid(raw);
  return grid.cells.every(isNotFilledIn) ? "empty" : shownRows(grid);
}
