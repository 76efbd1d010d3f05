/** The tables of a Book, as the part of a snapshot that the table plugin opens. */
import type { IResources } from "@univerjs/core";
import type { ITableJson } from "@univerjs/sheets-table";
import type { Book, BookTable } from "../sheet/book";
import { tableThemeName } from "./look";

const tableJson = (table: BookTable): ITableJson => ({
  id: table.name,
  name: table.name,
  range: {
    startRow: table.row,
    startColumn: table.column,
    endRow: table.row + table.rows - 1,
    endColumn: table.column + table.columns - 1,
  },
  options: { showHeader: true, showFooter: false, tableStyleId: tableThemeName },
  filters: { tableColumnFilterList: [] },
  // None given: headings are taken from the sheet.
  columns: [],
  meta: {},
});

/** Of each sheet by name, its tables. */
export function tablesOf(
  sheets: readonly { readonly name: string; readonly tables: readonly BookTable[] }[],
): IResources[number] {
  const found: Record<string, { tables: ITableJson[]; tableFilteredOutRows: number[] }> =
    Object.fromEntries(
      sheets
        .filter(({ tables }) => tables.length > 0)
        .map(({ name, tables }) => [
          name,
          { tables: tables.map(tableJson), tableFilteredOutRows: [] },
        ]),
    );
  return { name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(found) };
}

export const tableResource = (book: Book): IResources[number] => tablesOf(book.sheets);
