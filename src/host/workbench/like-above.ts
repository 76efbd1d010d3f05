/** The look, and the words to choose from, that the new rows of a table take from the row above them. */
import type { ICellData } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { WorkbookCells } from "../../workbench/engine/workbook-cells";
import type { Block } from "../../sheet/port";
import type { Command } from "./one-change";

function lookOf(cells: WorkbookCells, sheet: string, row: number, column: number): ICellData {
  const above = cells.names.sheet(sheet)?.getCellRaw(row, column);
  const style = cells.names.workbook.getStyles().getStyleByCell(above);
  const words: unknown = above?.custom?.words;
  return { ...(style ? { s: style } : {}), ...(words === undefined ? {} : { custom: { words } }) };
}

/** `last` is the table's last row before it grows to `block`. */
export function likeAbove(cells: WorkbookCells, block: Block, last: number): Command[] {
  const { sheet, column, columns } = block;
  const added = block.row + block.rows - 1 - last;
  if (added <= 0) return [];
  const look = Array.from({ length: columns }, (_, at) => lookOf(cells, sheet, last, column + at));
  const params = {
    unitId: cells.names.unit,
    subUnitId: cells.names.sheetId(sheet),
    range: {
      startRow: last + 1,
      startColumn: column,
      endRow: last + added,
      endColumn: column + columns - 1,
    },
    value: Array.from({ length: added }, () => look.map((cell) => ({ ...cell }))),
  };
  return [{ id: SetRangeValuesCommand.id, params }];
}
