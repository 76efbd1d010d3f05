/** Small books for tests. */
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import type { Book, BookCell, BookTable, BookValue } from "../../src/sheet/book";

/** Text that starts with an equals sign is a formula. */
const cell = (typed: BookValue | null): BookCell | null => {
  if (typed === null) return null;
  return typeof typed === "string" && typed.startsWith("=") ? { formula: typed } : { value: typed };
};

/** A book of one sheet, called Sheet. */
export const bookOf = (
  rows: readonly (readonly (BookValue | null)[])[],
  tables: readonly BookTable[] = [],
): Book => ({
  name: "test",
  sheets: [
    {
      name: "Sheet",
      rows: rows.map((cells) => cells.map(cell)),
      columnWidths: [],
      tables,
      frozenRows: 0,
    },
  ],
});

/** What one cell of the sheet holds: an address such as B2. Errors by their code. */
export function shownAt(workbook: HeadlessWorkbook, address: string): unknown {
  const value = workbook.value({ sheet: "Sheet", ...placeOf(address) });
  return value !== null && typeof value === "object" ? value.basicValue : value;
}

export function placeOf(address: string): { row: number; column: number } {
  return { row: Number(address.slice(1)) - 1, column: address.charCodeAt(0) - 65 };
}

/** Opens a book for one test and closes it after. */
export async function withBook(
  book: Book,
  test: (workbook: HeadlessWorkbook) => Promise<void> | void,
): Promise<void> {
  const workbook = await openHeadless(book);
  try {
    await test(workbook);
  } finally {
    workbook.close();
  }
}
