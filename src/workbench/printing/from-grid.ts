/** The sheet that is shown, as what is printed reads it. */
import type { WorkbookCells } from "../engine/workbook-cells";
import { shownValue } from "../engine/formatted";
import type { PrintSource } from "./printed";

export function shownSheet(cells: WorkbookCells): PrintSource {
  const sheet = cells.names.workbook.getActiveSheet();
  const name = sheet.getName();
  const found = cells.names.extent(name);
  return {
    name,
    extent: found && { row: 0, column: 0, rows: found.bottom + 1, columns: found.right + 1 },
    frozenRows: Math.max(0, sheet.getFreeze().ySplit),
    frozenColumns: Math.max(0, sheet.getFreeze().xSplit),
    merged: sheet.getMergeData().map(({ startRow, startColumn, endRow, endColumn }) => ({
      row: startRow,
      column: startColumn,
      rows: endRow - startRow + 1,
      columns: endColumn - startColumn + 1,
    })),
    width: (column) => sheet.getColumnWidth(column),
    height: (row) => sheet.getRowHeight(row),
    showsRow: (row) => sheet.getRowVisible(row),
    showsColumn: (column) => sheet.getColVisible(column),
    cell: (row, column) => {
      const place = { sheet: name, row, column };
      const value = cells.value(place);
      return {
        text: shownValue(value, cells.format(place)),
        isFigure: typeof value === "number",
        style: sheet.getComposedCellStyle(row, column),
      };
    },
  };
}
