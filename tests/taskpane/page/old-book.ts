/** The old logbook of the samples as typed figures: the workbook in memory works out no formulas of its own. */
import file from "../../../sample-workbooks/old-logbook.xlsx";
import type { Book, BookCell } from "../../../src/sheet/book";
import { isFileProblem, openXlsx, sayFile, type Sheet } from "../../../src/xlsx";

type Formats = readonly { readonly format: string }[];

function rowsOf({ cells }: Sheet, looks: Formats): (BookCell | null)[][] {
  const rows: (BookCell | null)[][] = [];
  for (const { row, column, value, look } of cells) {
    while (rows.length <= row) rows.push([]);
    const held = rows[row] as (BookCell | null)[];
    while (held.length <= column) held.push(null);
    if (value === undefined || typeof value === "object") continue;
    held[column] = { value, format: looks[look]?.format ?? "General" };
  }
  return rows;
}

export function oldBook(): Book {
  const book = openXlsx(file);
  if (isFileProblem(book)) throw new Error(sayFile(book));
  return {
    name: "Oil book",
    sheets: book.sheets.map((sheet) => ({
      name: sheet.name,
      rows: rowsOf(sheet, book.looks),
      columnWidths: [],
      tables: [],
      frozenRows: sheet.frozenRows,
    })),
  };
}
