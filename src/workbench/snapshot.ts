/** A Book as the embedded spreadsheet's own snapshot, which it opens. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import type { Book, BookCell, BookSheet, BookValue } from "../sheet/book";
import { carriedOfBook } from "./printing/sheet-print";
import { columnPixels, usualHeight, usualWidth } from "./file/row-heights";
import { rowsOf, styleAt, usualStyle } from "./look";
import { tableResource } from "./snapshot-tables";

const valueType = (value: BookValue): CellValueType => {
  if (typeof value === "number") return CellValueType.NUMBER;
  if (typeof value === "boolean") return CellValueType.BOOLEAN;
  return value.startsWith("#") ? CellValueType.FORCE_STRING : CellValueType.STRING;
};

/** A boolean is held as 1 or 0. */
const held = (value: BookValue): ICellData => ({
  v: typeof value === "boolean" ? Number(value) : value,
  t: valueType(value),
});

function cell(from: BookCell, style: IStyleData | undefined): ICellData {
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
      if (from) (data[row] ??= {})[column] = cell(from, styleAt(sheet, row, column));
    }
  }
  return data;
}

/** Rows and columns that stay in view; -1 where none do. */
export const freeze = (rows: number, columns: number): IWorksheetData["freeze"] => ({
  xSplit: columns,
  ySplit: rows,
  startRow: rows > 0 ? rows : -1,
  startColumn: columns > 0 ? columns : -1,
});

/** Room below and beside what is there, to go on in and to spill into. */
const spareRows = 60;
const spareColumns = 6;
const leastColumns = 26;

export interface SnapshotOptions {
  /** Keep columns in view that are to stay: false where there is no room for them. */
  readonly frozenColumns: boolean;
}

function sheetData(sheet: BookSheet, { frozenColumns }: SnapshotOptions): Partial<IWorksheetData> {
  const columns = Math.max(0, ...sheet.rows.map((row) => row.length));
  return {
    id: sheet.name,
    name: sheet.name,
    rowCount: sheet.rows.length + spareRows,
    columnCount: Math.max(columns + spareColumns, leastColumns),
    cellData: cells(sheet),
    columnData: Object.fromEntries(
      sheet.columnWidths.map((characters, column) => [column, { w: columnPixels(characters) }]),
    ),
    defaultStyle: usualStyle,
    defaultColumnWidth: usualWidth,
    defaultRowHeight: usualHeight,
    rowData: rowsOf(sheet),
    freeze: freeze(sheet.frozenRows, frozenColumns ? (sheet.frozenColumns ?? 0) : 0),
    showGridlines: BooleanNumber.TRUE,
  };
}

/** Sheets are known by their names inside the snapshot too. */
export function snapshotOf(
  book: Book,
  options: SnapshotOptions = { frozenColumns: true },
): IWorkbookData {
  return {
    id: "book",
    name: book.name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: {},
    sheetOrder: book.sheets.map((sheet) => sheet.name),
    sheets: Object.fromEntries(book.sheets.map((sheet) => [sheet.name, sheetData(sheet, options)])),
    resources: [tableResource(book)],
    ...carriedOfBook(book),
  };
}
