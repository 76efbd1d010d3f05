/** The cells that charts are drawn from: those of the open workbook, as they are now. */
import type { WorkbookCells } from "../engine/workbook-cells";
import type { ChartCells } from "./live";

export function openCells(cells: WorkbookCells): ChartCells {
  const { names } = cells;
  return {
    extent: (sheet) => {
      const found = names.extent(sheet);
      return found && { rows: found.bottom + 1, columns: found.right + 1 };
    },
    value: (sheet, row, column) => cells.value({ sheet, row, column }),
    format: (sheet, row, column) => cells.format({ sheet, row, column }),
    isHidden: (sheet, row, column) => {
      const found = names.sheet(sheet);
      return found !== undefined && !(found.getRowVisible(row) && found.getColVisible(column));
    },
    lookup: (name) => {
      const sheet = names.workbook.getActiveSheet().getName();
      return cells.lookup(name, { sheet, row: 0, column: 0 });
    },
  };
}
