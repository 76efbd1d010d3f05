/** Cells as a person writes them: Titrations!K12, 'Lab log'!A3:AF3. */
import type { Block } from "../../host/port";
import { columnLetters } from "../column-letters";

/** The block of one cell. */
export const cellAt = (sheet: string, row: number, column: number): Block => ({
  sheet,
  row,
  column,
  rows: 1,
  columns: 1,
});

/** A name that could be taken for anything else stands in quotation marks. */
export const quotedSheet = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_]*$/u.test(name) && !/^[a-z]{1,3}\d+$/i.test(name) && !/^r?c?$/i.test(name)
    ? name
    : `'${name.replace(/'/g, "''")}'`;

/** Without the sheet's name: A3, or A3:AF3 for more than one cell. */
export function localAddress({ row, column, rows, columns }: Block): string {
  const first = columnLetters(column) + String(row + 1);
  if (rows === 1 && columns === 1) return first;
  return `${first}:${columnLetters(column + columns - 1)}${String(row + rows)}`;
}

export const address = (block: Block): string =>
  `${quotedSheet(block.sheet)}!${localAddress(block)}`;
