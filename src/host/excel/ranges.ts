/** Blocks as the spreadsheet program's ranges, and back. */
import type { Block } from "../../sheet/port";

/** What says where a range is. */
export const place = "rowIndex,columnIndex,rowCount,columnCount";

export const rangeOf = (context: Excel.RequestContext, block: Block): Excel.Range =>
  context.workbook.worksheets
    .getItem(block.sheet)
    .getRangeByIndexes(block.row, block.column, block.rows, block.columns);

export const blockOf = (sheet: string, range: Excel.Range): Block => ({
  sheet,
  row: range.rowIndex,
  column: range.columnIndex,
  rows: range.rowCount,
  columns: range.columnCount,
});
