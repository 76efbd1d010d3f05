/** What a cell of a logbook shows, in a picture of its table or of one of its rows. */
import { shownIn } from "../../adopt/recheck/reading/held-figure";
import { heldCell, type SheetCells } from "../../adopt/recognising/sheet-cells";
import { dateFrom, type DateOrder } from "../../adopt/recognising/typed-date";
import { dayInWords } from "../../workbook/over-time/day-words";

const longest = 24;

export function shownCell(
  cells: SheetCells,
  row: number,
  column: number,
  order?: DateOrder,
): string {
  const cell = heldCell(cells, row, column);
  const { value, format } = cell;
  if (typeof value === "object") return value.error;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") {
    const day = dateFrom(value, format, order);
    if (day !== undefined) return dayInWords(day);
    return format.includes("%") ? `${shownIn(cell, value)} %` : shownIn(cell, value);
  }
  const text = value.trim();
  return text.length > longest ? `${text.slice(0, longest - 1)}…` : text;
}
