/** What cells are called within their sheet: B2, A1:C3. */
import type { Area } from "./area";

/** The name of a column counted from 0: A, Z, AA, XFD. */
export function columnLetters(column: number): string {
  const before = column >= 26 ? columnLetters(Math.floor(column / 26) - 1) : "";
  return before + String.fromCharCode(65 + (column % 26));
}

/** The column of a name in any case, counted from 0: A is 0, AA is 26. */
export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

export const cellName = (row: number, column: number): string =>
  columnLetters(column) + String(row + 1);

/** A1:C3; with one cell, A1 alone. */
export function areaName({ row, column, rows, columns }: Area): string {
  const first = cellName(row, column);
  if (rows === 1 && columns === 1) return first;
  return `${first}:${cellName(row + rows - 1, column + columns - 1)}`;
}
