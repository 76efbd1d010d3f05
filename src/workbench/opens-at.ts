/** Where the sample logbook opens, and where its first look is taken. */
import type { Book } from "../sheet/book";
import type { CellPlace } from "../sheet/area";

/** The cell under a heading of a sheet's table, by its row in the table; the heading itself is row 0. */
export function cellUnder(
  book: Book,
  sheet: string,
  heading: string,
  row: number,
): CellPlace | undefined {
  const found = book.sheets.find(({ name }) => name === sheet);
  const table = found?.tables[0];
  const column = found?.rows[table?.row ?? 0]?.findIndex((cell) => cell?.value === heading) ?? -1;
  return table && column >= 0 ? { sheet, row: table.row + row, column } : undefined;
}

export const firstCell = (book: Book): CellPlace => ({
  sheet: book.sheets[0]?.name ?? "",
  row: 0,
  column: 0,
});

/** The example is looked at from a dose on: the pane has something to explain at once. */
export const opensAt = (book: Book): CellPlace =>
  cellUnder(book, "Batches", "Catalyst g", 1) ?? firstCell(book);
