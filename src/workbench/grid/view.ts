/** Where one is in the grid: sheet, selection, how far it is scrolled; to be there again in another file. */
import type { FUniver } from "@univerjs/core/facade";
import type { CellPlace } from "../../sheet/area";

export interface View {
  readonly place: CellPlace;
  /** Cells that are selected, from that one on. */
  readonly rows: number;
  readonly columns: number;
  readonly firstRow: number;
  readonly firstColumn: number;
}

export function viewOf(api: FUniver): View | undefined {
  const sheet = api.getActiveWorkbook()?.getActiveSheet();
  const range = sheet?.getActiveRange();
  if (!sheet || !range) return undefined;
  const { sheetViewStartRow: firstRow, sheetViewStartColumn: firstColumn } = sheet.getScrollState();
  const place = { sheet: sheet.getSheetName(), row: range.getRow(), column: range.getColumn() };
  return { place, rows: range.getHeight(), columns: range.getWidth(), firstRow, firstColumn };
}

export function showView(api: FUniver, view: View): void {
  const { place, rows, columns, firstRow, firstColumn } = view;
  const workbook = api.getActiveWorkbook();
  const sheet = workbook?.getSheetByName(place.sheet);
  if (!workbook || !sheet) return;
  workbook.setActiveSheet(sheet);
  const row = Math.min(place.row, sheet.getMaxRows() - 1);
  const column = Math.min(place.column, sheet.getMaxColumns() - 1);
  const height = Math.min(rows, sheet.getMaxRows() - row);
  const width = Math.min(columns, sheet.getMaxColumns() - column);
  sheet.getRange(row, column, height, width).activate();
  sheet.scrollToCell(firstRow, firstColumn, 0);
}
