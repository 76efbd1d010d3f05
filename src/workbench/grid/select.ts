/** Selects a cell, or shows one that is selected, and scrolls no further than it takes to see it. */
import type { FUniver } from "@univerjs/core/facade";
import { ScrollCommand } from "@univerjs/preset-sheets-core";
import type { CellPlace } from "../../sheet/area";

type SheetOfApi = NonNullable<
  ReturnType<NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>["getSheetByName"]>
>;

/** Row numbers at the left, the scroll bar at the right. */
const aroundColumns = 46 + 12;
/** Pixels left in view above a row that was scrolled to. */
const roomAbove = 60;

/** Right at the frozen columns the grid would scroll back by a column as soon as one types. */
const besideFrozen = 2;

interface Edges {
  readonly left: number;
  readonly right: number;
}

/** Where columns stand, in pixels from the first one's left edge. */
class Columns {
  private readonly frozen: number;
  /** Of what scrolls. */
  private readonly room: number;

  constructor(
    private readonly sheet: SheetOfApi,
    width: number,
  ) {
    this.frozen = this.edges(sheet.getFrozenColumns()).left;
    this.room = width - aroundColumns - this.frozen;
  }

  edges(column: number): Edges {
    let left = 0;
    for (let index = 0; index < column; index += 1) left += this.sheet.getColumnWidth(index);
    return { left, right: left + this.sheet.getColumnWidth(column) };
  }

  isSeen(column: number): boolean {
    if (column < this.sheet.getFrozenColumns()) return true;
    const { sheetViewStartColumn, offsetX } = this.sheet.getScrollState();
    const from = this.frozen + this.edges(sheetViewStartColumn).left + offsetX;
    const { left, right } = this.edges(column);
    const isAtEdge = left > from && left <= from + besideFrozen;
    return isAtEdge || (left >= from && right <= from + this.room);
  }

  /**
   * The column to scroll to with which one is just seen. The grid scrolls past the widths of as many
   * columns as are passed, counted from the very first: frozen ones and all. Where the next one is wider than
   * there is room, by some pixels of it.
   */
  firstFor(column: number): { readonly first: number; readonly offset: number } {
    const { left, right } = this.edges(column);
    let passed = 0;
    let first = 0;
    while (passed + this.frozen + this.room < right) {
      const next = passed + this.sheet.getColumnWidth(first);
      if (next + this.frozen >= left) break;
      passed = next;
      first += 1;
    }
    const most = left - this.frozen - besideFrozen;
    const wanting = Math.min(right - this.frozen - this.room, most) - passed;
    return { first: first + this.sheet.getFrozenColumns(), offset: Math.max(0, wanting) };
  }
}

export function select(api: FUniver, { sheet, row, column }: CellPlace, width: number): void {
  const workbook = api.getActiveWorkbook();
  const found = workbook?.getSheetByName(sheet);
  if (!workbook || !found) return;
  workbook.setActiveSheet(found);
  found.getRange(row, column).activate();
  const { first, offset } = new Columns(found, width).firstFor(column);
  if (first > found.getFrozenColumns()) found.scrollToCell(found.getFrozenRows(), first);
  if (offset > 0) reveal(api, { sheet, row, column }, width);
}

/** How many rows are passed with which one stands that far below the frozen ones. */
function rowsPassed(sheet: SheetOfApi, row: number): number {
  let below = roomAbove;
  for (let index = 0; index < sheet.getFrozenRows(); index += 1) below += sheet.getRowHeight(index);
  let passed = row;
  while (passed > 0 && below > 0) {
    passed -= 1;
    below -= sheet.getRowHeight(passed);
  }
  return passed;
}

export function reveal(api: FUniver, { sheet, row, column }: CellPlace, width: number): void {
  const found = api.getActiveWorkbook()?.getSheetByName(sheet);
  const seen = found?.getVisibleRange();
  if (!found || !seen) return;
  const rowIsSeen = row < found.getFrozenRows() || (row >= seen.startRow && row < seen.endRow);
  const columns = new Columns(found, width);
  const columnIsSeen = columns.isSeen(column);
  if (rowIsSeen && columnIsSeen) return;
  const now = found.getScrollState();
  const { first, offset } = columns.firstFor(column);
  api.syncExecuteCommand(ScrollCommand.id, {
    sheetViewStartRow: rowIsSeen ? now.sheetViewStartRow : rowsPassed(found, row),
    offsetY: rowIsSeen ? now.offsetY : 0,
    sheetViewStartColumn: columnIsSeen
      ? now.sheetViewStartColumn
      : first - found.getFrozenColumns(),
    offsetX: columnIsSeen ? now.offsetX : offset,
  });
}
