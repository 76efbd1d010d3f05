/**
 * Rows grow and shrink with what their formulas say: a sentence in a wrapped cell, which the embedded
 * spreadsheet measures where it is typed, and not where it is worked out. It is no edit, and no step to undo.
 */
import { BooleanNumber, WrapStrategy, type Worksheet } from "@univerjs/core";
import type { Cell, Look } from "../xlsx";
import type { WorkbookNames } from "./engine/workbook-names";
import { pointsInFile, rowHeights } from "./file/row-heights";

const general = "General";
/** Points. */
const oneLine = 15;

/** Where a sheet's formulas answer in wrapped cells: the columns of its tables in whose rows one does. */
function wrappedColumns(sheet: Worksheet, names: WorkbookNames): number[] {
  const found = new Set<number>();
  for (const { top, left, bottom, right } of names.tables(sheet.getName())) {
    for (let column = left; column <= right; column += 1) {
      const row = Math.min(top + 1, bottom);
      const cell = sheet.getCellRaw(row, column);
      if ((cell?.f ?? cell?.si) && wraps(sheet, row, column)) found.add(column);
    }
  }
  return [...found];
}

const styleAt = (sheet: Worksheet, row: number, column: number) =>
  sheet.getComposedCellStyle(row, column);

const wraps = (sheet: Worksheet, row: number, column: number): boolean =>
  styleAt(sheet, row, column)?.tb === WrapStrategy.WRAP;

const textAt = (sheet: Worksheet, row: number, column: number): string => {
  const value = sheet.getCellRaw(row, column)?.v;
  return typeof value === "string" ? value : "";
};

/** Pixels that a row needs for what it holds. */
function needed(sheet: Worksheet, row: number, last: number): number {
  const looks: Look[] = [];
  const cells: Cell[] = [];
  let points = 0;
  for (let column = 0; column <= last; column += 1) {
    const style = styleAt(sheet, row, column);
    if (!style) continue;
    const look = {
      format: general,
      wraps: style.tb === WrapStrategy.WRAP,
      bold: style.bl === BooleanNumber.TRUE,
      ...(style.fs === undefined ? {} : { size: style.fs }),
    };
    const text = textAt(sheet, row, column);
    cells.push({ row, column, value: text, look: looks.push(look) - 1 });
    if (!look.wraps) continue;
    points = Math.max(points, pointsInFile({ text, look, pixels: sheet.getColumnWidth(column) }));
  }
  const usual = sheet.getConfig().defaultRowHeight;
  const widthOf = (column: number) => sheet.getColumnWidth(column);
  // as high as the file says that it was saved in
  const heights = points > oneLine ? [{ row, height: points, isSet: false }] : [];
  return rowHeights({ cells, heights, merged: [] }, looks, widthOf, usual)[row] ?? usual;
}

export class FitRows {
  private unit = "";
  private readonly columns = new Map<string, readonly number[]>();
  private readonly said = new Map<string, string>();

  constructor(
    private readonly names: WorkbookNames,
    /** Draws sheets anew, by the engine's own names. */
    private readonly redraw: (unit: string, sheets: readonly string[]) => void,
  ) {}

  /** Whatever was worked out last. */
  fit(): void {
    const { unit } = this.names;
    if (unit !== this.unit) {
      this.columns.clear();
      this.said.clear();
      this.unit = unit;
    }
    const changed = this.names.workbook.getSheets().filter((sheet) => this.fitSheet(sheet));
    if (changed.length === 0) return;
    this.redraw(
      unit,
      changed.map((sheet) => sheet.getSheetId()),
    );
  }

  private fitSheet(sheet: Worksheet): boolean {
    const id = sheet.getSheetId();
    const columns = this.columns.get(id) ?? wrappedColumns(sheet, this.names);
    this.columns.set(id, columns);
    const extent = this.names.extent(sheet.getName());
    if (columns.length === 0 || !extent) return false;
    let isChanged = false;
    for (let row = 0; row <= extent.bottom; row += 1) {
      const text = columns.map((column) => textAt(sheet, row, column)).join("\n");
      const key = `${id} ${String(row)}`;
      if ((this.said.get(key) ?? "") === text) continue;
      this.said.set(key, text);
      const data = sheet.getRowManager().getRowOrCreate(row);
      if (data.ia === BooleanNumber.FALSE) continue;
      const height = needed(sheet, row, extent.right);
      if (height === sheet.getRowManager().getRowHeight(row)) continue;
      data.ah = height;
      isChanged = true;
    }
    return isChanged;
  }
}
