/** Where a cell stands. Rows and columns are counted from 0, as the engine does. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A for the first column, AA for the twenty-seventh. */
export function columnLetters(column: number): string {
  const before = column >= 26 ? columnLetters(Math.floor(column / 26) - 1) : "";
  return before + String.fromCharCode(65 + (column % 26));
}

/** A1 for the first cell. */
export const addressOf = (row: number, column: number): string =>
  `${columnLetters(column)}${row + 1}`;
