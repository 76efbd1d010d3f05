/** Cells with their sheet, as a person writes them: Titrations!K12, 'Lab log'!A3:AF3. */
import type { Block } from "./area";
import { areaName } from "./cell-name";
import { sheetPrefix } from "./sheet-prefix";

/** The block of one cell. */
export const cellAt = (sheet: string, row: number, column: number): Block => ({
  sheet,
  row,
  column,
  rows: 1,
  columns: 1,
});

export const address = (block: Block): string => sheetPrefix(block.sheet) + areaName(block);
