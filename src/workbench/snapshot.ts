/** A Book as the embedded spreadsheet's own snapshot, which it opens. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import type { Book, BookCell, BookSheet, BookValue } from "../workbook/book";
import { cellStyle, columnWidth } from "./look";
import { tableResource } from "./tables";

const valueType = (value: BookValue): CellValueType => {
  if (typeof value === "number") return CellValueType.NUMBER;
  return typeof value === "boolean" ? CellValueType.BOOLEAN : CellValueType.STRING;
};

/** A boolean is held as 1 or 0. */
const held = (value: BookValue): ICellData => ({
  v: typeof value === "boolean" ? Number(value) : value,
  t: valueType(value),
});

function cell(from: BookCell): ICellData {
  const style = cellStyle(from);
  return {
    ...(from.value === undefined ? {} : held(from.value)),
    ...(from.formula === undefined ? {} : { f: from.formula }),
    ...(style ? { s: style } : {}),
    ...(from.note === undefined ? {} : { custom: { note: from.note } }),
  };
}

function cells(sheet: BookSheet): IWorksheetData["cellData"] {
  const data: Record<number, Record<number, ICellData>> = {};
  for (const [row, rowCells] of sheet.rows.entries()) {
    for (const [column, from] of rowCells.entries()) {
      if (from) (data[row] ??= {})[column] = cell(from);
    }
  }
  return data;
}

/** Room below and beside what is there, to go on in. */
const spareRows = 60;
const spareColumns = 6;

function sheetData(sheet: BookSheet): Partial<IWorksheetData> {
  const columns = Math.max(0, ...sheet.rows.map((row) => row.length));
  return {
    id: sheet.name,
    name: sheet.name,
    rowCount: sheet.rows.length + spareRows,
    columnCount: columns + spareColumns,
    cellData: cells(sheet),
    columnData: Object.fromEntries(
      sheet.columnWidths.map((characters, column) => [column, { w: columnWidth(characters) }]),
    ),
    rowData: {},
    freeze: {
      xSplit: 0,
      ySplit: sheet.frozenRows,
      startRow: sheet.frozenRows > 0 ? sheet.frozenRows : -1,
      startColumn: -1,
    },
    showGridlines: BooleanNumber.TRUE,
  };
}

/** Sheets are known by their names inside the snapshot too. */
export function snapshotOf(book: Book): IWorkbookData {
  return {
    id: "book",
    name: book.name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: book.sheets.map((sheet) => sheet.name),
    sheets: Object.fromEntries(book.sheets.map((sheet) => [sheet.name, sheetData(sheet)])),
    resources: [tableResource(book)],
  };
}
