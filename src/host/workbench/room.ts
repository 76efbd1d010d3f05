/** Room on a sheet: what lies beyond its last row or column means nothing to a formula there. */
import { SetWorksheetColumnCountCommand, SetWorksheetRowCountCommand } from "@univerjs/sheets";
import type { WorkbookCells } from "../../workbench/engine/workbook-cells";
import type { Block } from "../../sheet/port";
import type { Command } from "./one-change";

/** The commands that make a sheet as large as a block needs it. */
export function roomFor({ names }: WorkbookCells, block: Block): Command[] {
  const sheet = names.sheet(block.sheet);
  if (!sheet) return [];
  const at = { unitId: names.unit, subUnitId: names.sheetId(block.sheet) };
  const [rows, columns] = [block.row + block.rows, block.column + block.columns];
  return [
    ...(rows > sheet.getRowCount()
      ? [{ id: SetWorksheetRowCountCommand.id, params: { ...at, rowCount: rows } }]
      : []),
    ...(columns > sheet.getColumnCount()
      ? [{ id: SetWorksheetColumnCountCommand.id, params: { ...at, columnCount: columns } }]
      : []),
  ];
}
