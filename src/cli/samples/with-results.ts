/**
 * A file in which some formulas have no result yet, with the results as the embedded engine works them
 * out: viewers that work nothing out then show every cell.
 */
import type { Book, BookCell, BookSheet } from "../../sheet/book";
import {
  type Cell,
  type Edit,
  isFileProblem,
  openXlsx,
  patchXlsx,
  sayFile,
  type Sheet,
  type Workbook,
} from "../../xlsx";
import { computedBook } from "./computed";

function bookCell({ value, formula }: Cell): BookCell | null {
  if (formula !== undefined) return { formula };
  return value === undefined || typeof value === "object" ? null : { value };
}

function bookSheet({ name, cells, tables }: Sheet): BookSheet {
  const rows: (BookCell | null)[][] = [];
  for (const cell of cells) {
    while (rows.length <= cell.row) rows.push([]);
    const row = rows[cell.row] ?? [];
    while (row.length <= cell.column) row.push(null);
    row[cell.column] = bookCell(cell);
  }
  const areas = tables.map(({ name: table, area }) => ({ name: table, ...area }));
  return { name, rows, columnWidths: [], tables: areas, frozenRows: 0 };
}

function missingResults(workbook: Workbook, computed: Book): Edit[] {
  return workbook.sheets.flatMap((sheet, place) =>
    sheet.cells.flatMap(({ row, column, formula, value }): Edit[] => {
      if (formula === undefined || value !== undefined) return [];
      const result = computed.sheets[place]?.rows[row]?.[column]?.results?.[0]?.[0] ?? "";
      const content = { kind: "result", value: result } as const;
      return [{ do: "set-cell", sheet: sheet.name, row, column, content }];
    }),
  );
}

export async function withResults(name: string, bytes: Uint8Array): Promise<Uint8Array> {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(`${name}: ${sayFile(workbook)}`);
  const computed = await computedBook({ name, sheets: workbook.sheets.map(bookSheet) });
  const filled = patchXlsx(workbook, missingResults(workbook, computed));
  if (isFileProblem(filled)) throw new Error(`${name}: ${sayFile(filled)}`);
  return filled;
}
