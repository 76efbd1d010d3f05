/** Selects a cell and scrolls no further than it takes to see it. */
import type { Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import type { CellPlace } from "../engine/place";

/** Row numbers at the left, the scroll bar at the right. */
const aroundColumns = 46 + 12;

export function select(univer: Univer, { sheet, row, column }: CellPlace, width: number): void {
  const workbook = FUniver.newAPI(univer).getActiveWorkbook();
  const found = workbook?.getSheetByName(sheet);
  if (!workbook || !found) return;
  workbook.setActiveSheet(found);
  found.getRange(row, column).activate();
  const frozen = found.getFrozenColumns();
  const widthOf = (index: number): number => found.getColumnWidth(index);
  let room = width - aroundColumns - widthOf(column);
  for (let index = 0; index < frozen; index += 1) room -= widthOf(index);
  let first = column;
  while (first > frozen && widthOf(first - 1) <= room) {
    first -= 1;
    room -= widthOf(first);
  }
  if (first > frozen) found.scrollToCell(found.getFrozenRows(), first);
}
