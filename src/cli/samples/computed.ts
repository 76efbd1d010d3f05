/** A book with the result of every formula in it, as the embedded engine works them out. */
import type { GivenCell } from "../../workbench/engine/cells";
import { openHeadless } from "../../workbench/engine/node";
import type { CellPlace } from "../../sheet/area";
import type { WorkbookCells } from "../../workbench/engine/workbook-cells";
import type { Book, BookCell, BookResult } from "../../sheet/book";

const resultOf = (value: GivenCell): BookResult => {
  // A formula that refers to an empty cell comes to 0.
  if (value === null) return 0;
  return typeof value === "object" ? { error: value.basicValue } : value;
};

/** How far the answer of a cell's formula reaches, down or to the right: 1 when it is one value. */
function reach(cells: WorkbookCells, at: CellPlace, way: "row" | "column"): number {
  const isOwn = (step: number): boolean => {
    const from = cells.spilledFrom({ ...at, [way]: at[way] + step });
    return from?.row === at.row && from.column === at.column;
  };
  let size = 1;
  while (isOwn(size)) size += 1;
  return size;
}

const resultsAt = (cells: WorkbookCells, at: CellPlace): BookResult[][] =>
  Array.from({ length: reach(cells, at, "row") }, (_, down) =>
    Array.from({ length: reach(cells, at, "column") }, (__, across) =>
      resultOf(cells.value({ ...at, row: at.row + down, column: at.column + across })),
    ),
  );

export async function computedBook(book: Book): Promise<Book> {
  const workbook = await openHeadless(book);
  const computed = (cell: BookCell | null, at: CellPlace): BookCell | null =>
    cell?.formula === undefined ? cell : { ...cell, results: resultsAt(workbook.cells, at) };
  try {
    return {
      ...book,
      sheets: book.sheets.map((sheet) => ({
        ...sheet,
        rows: sheet.rows.map((cells, row) =>
          cells.map((cell, column) => computed(cell, { sheet: sheet.name, row, column })),
        ),
      })),
    };
  } finally {
    workbook.close();
  }
}
