/** A file's workbook as the embedded spreadsheet's own snapshot, which it opens. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRange,
  type IRowData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import type { Area, Cell, CellValue, Look, Sheet } from "../../xlsx";
import { textType } from "../engine/cells";
import { carriedOfFile } from "../printing/sheet-print";
import { sheetKey } from "../sheet-key";
import { freeze } from "../snapshot";
import { hangBeside } from "./beside-cells";
import { namesResource, tablesResource } from "./file-resources";
import { type DateShift, datesIn } from "./dates";
import { styleName, styleOf } from "./file-style";
import type { OpenedFile } from "./opened-file";
import { columnPixels, rowDataOf, rowHeights, usualHeight, usualWidth } from "./row-heights";
import { isWorkable } from "./workable";

/** Room below and beside what is there, to go on in and to spill into. */
const spareRows = 200;
const spareColumns = 8;
const leastRows = 200;
const leastColumns = 26;

function held(value: CellValue): ICellData {
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: Number(value), t: CellValueType.BOOLEAN };
  if (typeof value === "object") return { v: value.error, t: CellValueType.STRING };
  return { v: value, t: textType(value) };
}

/** Is the array formula in this cell held, so that its answers stay where they are? */
type KeepsAnswers = (row: number, column: number) => boolean;

function cellData(
  cell: Cell,
  looks: readonly Look[],
  shift: DateShift,
  keepsAnswers: KeepsAnswers,
): ICellData {
  const style = cell.look === 0 ? {} : { s: styleName(cell.look) };
  const { formula, spilledFrom } = cell;
  const isShown = cell.value !== undefined && cell.value !== "";
  const value = isShown ? held(shift(cell.value, looks[cell.look]?.format)) : {};
  if (formula !== undefined) {
    // until it is worked out, and for good where it is held, it shows what it last came to
    if (isWorkable(formula)) return { ...style, f: formula, ...value };
    return { ...style, ...(isShown ? value : held({ error: "#VALUE!" })) };
  }
  // what a formula elsewhere answers here is worked out anew
  if (spilledFrom && !keepsAnswers(spilledFrom.row, spilledFrom.column)) return style;
  return { ...style, ...value };
}

const rangeOf = ({ row, column, rows, columns }: Area): IRange => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

function cells(sheet: Sheet, looks: readonly Look[], shift: DateShift, keepsAnswers: KeepsAnswers) {
  const data: Record<number, Record<number, ICellData>> = {};
  for (const cell of sheet.cells) {
    (data[cell.row] ??= {})[cell.column] = cellData(cell, looks, shift, keepsAnswers);
  }
  hangBeside(data, sheet);
  return data;
}

type Columns = Record<number, { w?: number; hd?: BooleanNumber; s?: string }>;

function columns(sheet: Sheet, last: number): Columns {
  const data: Columns = {};
  for (const { first, last: end, width, isHidden, look } of sheet.widths) {
    for (let column = first; column <= Math.min(end, last); column += 1) {
      data[column] = {
        ...(width === undefined ? {} : { w: columnPixels(width) }),
        ...(isHidden ? { hd: BooleanNumber.TRUE } : {}),
        ...(look === 0 ? {} : { s: styleName(look) }),
      };
    }
  }
  return data;
}

type RowData = Record<number, Partial<IRowData>>;

function rows(sheet: Sheet, looks: readonly Look[], widths: Columns): IWorksheetData["rowData"] {
  const widthOf = (column: number) => widths[column]?.w ?? usualWidth;
  const data: RowData = rowDataOf(rowHeights(sheet, looks, widthOf, usualHeight), sheet.heights);
  for (const row of sheet.hiddenRows) data[row] = { ...data[row], hd: BooleanNumber.TRUE };
  return data;
}

/** The last of something, or -1. Spread into Math.max, a long list would be too many arguments. */
const lastOf = <T>(items: readonly T[], last: (item: T) => number): number =>
  items.reduce((found, item) => Math.max(found, last(item)), -1);

function extent({ cells: all, tables }: Sheet): { rows: number; columns: number } {
  return {
    rows: Math.max(
      lastOf(all, ({ row }) => row + 1),
      lastOf(tables, ({ area }) => area.row + area.rows),
    ),
    columns: Math.max(
      lastOf(all, ({ column }) => column + 1),
      lastOf(tables, ({ area }) => area.column + area.columns),
    ),
  };
}

export interface FileSnapshotOptions {
  /** A name no open workbook had before. */
  readonly unit: string;
  readonly name: string;
  /** Keep columns in view that are to stay: false where there is no room for them. */
  readonly frozenColumns: boolean;
  /** Is a cell held, as far as is known already? By the grid's name of its sheet. */
  readonly isHeld?: (sheet: string, row: number, column: number) => boolean;
}

function sheetData(
  sheet: Sheet,
  looks: readonly Look[],
  shift: DateShift,
  keepsColumns: boolean,
  keepsAnswers: KeepsAnswers,
): Partial<IWorksheetData> {
  const used = extent(sheet);
  const columnCount = Math.max(used.columns + spareColumns, leastColumns);
  const columnData = columns(sheet, columnCount - 1);
  return {
    id: sheetKey(sheet.name),
    name: sheet.name,
    hidden: sheet.state === "visible" ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    rowCount: Math.max(used.rows + spareRows, leastRows),
    columnCount,
    cellData: cells(sheet, looks, shift, keepsAnswers),
    columnData,
    rowData: rows(sheet, looks, columnData),
    mergeData: sheet.merged.map(rangeOf),
    defaultColumnWidth: usualWidth,
    defaultRowHeight: usualHeight,
    defaultStyle: styleOf(looks[0] ?? { format: "General" }),
    freeze: freeze(sheet.frozenRows, keepsColumns ? sheet.frozenColumns : 0),
    showGridlines: BooleanNumber.TRUE,
  };
}

/** Sheets without cells stay out. */
export function fileSnapshot(file: OpenedFile, options: FileSnapshotOptions): IWorkbookData {
  const sheets = file.sheets.filter(({ kind }) => kind === "cells");
  const shift = datesIn(file.dates);
  return {
    id: options.unit,
    name: options.name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(
      file.looks.map((look, index) => [styleName(index), { ...styleOf(look), look: index }]),
    ),
    sheetOrder: sheets.map(({ name }) => sheetKey(name)),
    sheets: Object.fromEntries(
      sheets.map((sheet) => [
        sheetKey(sheet.name),
        sheetData(
          sheet,
          file.looks,
          shift,
          options.frozenColumns,
          (row, column) => options.isHeld?.(sheetKey(sheet.name), row, column) ?? false,
        ),
      ]),
    ),
    resources: [tablesResource(sheets), namesResource(file)],
    ...carriedOfFile(file),
  };
}
