/** A book of our own with the results that the grid worked out, fit for a file. */
import type { Book, BookCell, BookSheet } from "../../workbook/book";
import { fileValue } from "./cell-edits";
import type { GridState, SheetState } from "./grid-state";

function withResults(cell: BookCell, sheet: SheetState, row: number, column: number): BookCell {
  const state = sheet.cells.get(row)?.get(column);
  if (cell.formula === undefined || !state) return cell;
  const values = sheet.spills.get(row)?.get(column)?.values ?? [[state.value]];
  return { ...cell, results: values.map((each) => each.map(fileValue)) };
}

const computedSheet = (book: BookSheet, sheet: SheetState): BookSheet => ({
  ...book,
  rows: book.rows.map((cells, row) =>
    cells.map((cell, column) => cell && withResults(cell, sheet, row, column)),
  ),
});

export const computedBook = (book: Book, state: GridState): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => {
    const shown = state.sheets.find(({ name }) => name === sheet.name);
    return shown ? computedSheet(sheet, shown) : sheet;
  }),
});
