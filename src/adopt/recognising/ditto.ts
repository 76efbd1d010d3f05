/** Ditto marks: a cell that says "the same as above". They are read as the value above them. */
import type { TablePlace } from "./find-tables";
import { heldCell, isHeld, type LogbookValue, type SheetCells } from "./sheet-cells";

const marks =
  /^(?:["″〃“”„]|''|’’|′′|,,|do\.?|dto\.?|dito|ditto|same(?: as (?:above|before))?|as (?:above|before)|idem|↓)$/i;
const longestMark = 14;

export const isDitto = (value: unknown): boolean =>
  typeof value === "string" && value.length <= longestMark && marks.test(value.trim());

/** Does a ditto mark stand in this column of the table? */
export function hasDitto(cells: SheetCells, place: TablePlace, column: number): boolean {
  for (let row = place.firstRow; row <= place.lastRow; row += 1)
    if (isDitto(heldCell(cells, row, column).value)) return true;
  return false;
}

/** The cells with each mark of a table as the value above it; a mark with nothing above stays one. */
export function withDittosRead(cells: SheetCells, place: TablePlace): SheetCells {
  let values: LogbookValue[][] | undefined;
  let formats: string[][] | undefined;
  for (let column = place.firstColumn; column <= place.lastColumn; column += 1) {
    let above: { value: LogbookValue; format: string } | undefined;
    for (let row = place.firstRow; row <= place.lastRow; row += 1) {
      const cell = heldCell(cells, row, column);
      if (!isHeld(cell)) continue;
      if (!isDitto(cell.value)) {
        above = cell;
        continue;
      }
      if (!above) continue;
      values ??= cells.values.map((each) => [...each]);
      formats ??= cells.formats.map((each) => [...each]);
      (values[row - cells.row] as LogbookValue[])[column - cells.column] = above.value;
      (formats[row - cells.row] as string[])[column - cells.column] = above.format;
    }
  }
  return values && formats ? { ...cells, values, formats } : cells;
}
