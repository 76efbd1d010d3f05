/** Selects a cell, or shows one that is selected, and scrolls no further than it takes to see it. */
import type { FUniver } from "@univerjs/core/facade";
import type { CellPlace } from "../../sheet/area";

type SheetOfApi = NonNullable<
  ReturnType<NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>["getSheetByName"]>
>;

/** Row numbers at the left, the scroll bar at the right. */
const aroundColumns = 46 + 12;
/** Rows left in view above one that was scrolled to. */
const rowsAbove = 3;

/** The first column in view, beside the frozen ones, with which a column is just seen. */
function firstColumnFor(sheet: SheetOfApi, column: number, width: number): number {
  const frozen = sheet.getFrozenColumns();
  const widthOf = (index: number): number => sheet.getColumnWidth(index);
  let room = width - aroundColumns - widthOf(column);
  for (let index = 0; index < frozen; index += 1) room -= widthOf(index);
  let first = column;
  while (first > frozen && widthOf(first - 1) <= room) {
    first -= 1;
    room -= widthOf(first);
  }
  return first;
}

export function select(api: FUniver, { sheet, row, column }: CellPlace, width: number): void {
  const workbook = api.getActiveWorkbook();
  const found = workbook?.getSheetByName(sheet);
  if (!workbook || !found) return;
  workbook.setActiveSheet(found);
  found.getRange(row, column).activate();
  const first = firstColumnFor(found, column, width);
  if (first > found.getFrozenColumns()) found.scrollToCell(found.getFrozenRows(), first);
}

export function reveal(api: FUniver, { sheet, row, column }: CellPlace, width: number): void {
  const found = api.getActiveWorkbook()?.getSheetByName(sheet);
  const seen = found?.getVisibleRange();
  if (!found || !seen) return;
  const rowIsSeen = row < found.getFrozenRows() || (row >= seen.startRow && row < seen.endRow);
  const columnIsSeen =
    column < found.getFrozenColumns() || (column >= seen.startColumn && column < seen.endColumn);
  if (rowIsSeen && columnIsSeen) return;
  found.scrollToCell(
    rowIsSeen ? seen.startRow : Math.max(row - rowsAbove, found.getFrozenRows()),
    columnIsSeen ? seen.startColumn : firstColumnFor(found, column, width),
  );
}
