/** A memory host with a book in it. */
import { MemoryHost } from "./memory";
import { emptySheet, type MemoryBook, type MemorySheet } from "./memory/book";
import type { Book, BookSheet } from "../../src/sheet/book";
import { calculation } from "./calculation";

function memorySheet(from: BookSheet): MemorySheet {
  const sheet = emptySheet(from.name);
  for (const [row, cells] of from.rows.entries()) {
    for (const [column, cell] of cells.entries()) {
      if (!cell) continue;
      sheet.cells[`${row},${column}`] = {
        value: cell.formula === undefined ? (cell.value ?? "") : "",
        formula: cell.formula ?? "",
        format: cell.format ?? "General",
        ...(cell.style ? { style: cell.style } : {}),
        ...(cell.note === undefined ? {} : { note: cell.note }),
      };
    }
  }
  sheet.widths = { ...from.columnWidths };
  sheet.frozenRows = from.frozenRows;
  return sheet;
}

export const memoryBook = (book: Book): MemoryBook => ({
  sheets: book.sheets.map(memorySheet),
  tables: book.sheets.flatMap((sheet) =>
    sheet.tables.map(({ name, ...block }) => ({
      name,
      block: { sheet: sheet.name, ...block },
      isFiltered: false,
      hasTotals: false,
    })),
  ),
  definedNames: {},
  isReadOnly: false,
  isProtected: false,
});

export const openMemory = (book?: Book): MemoryHost =>
  new MemoryHost(calculation, book ? memoryBook(book) : undefined);
