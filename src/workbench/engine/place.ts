import { columnLetters } from "../../workbook/column-letters";

/** Where a cell stands. Rows and columns are counted from 0, as the engine does. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A1 for the first cell. */
export const addressOf = (row: number, column: number): string =>
  `${columnLetters(column)}${row + 1}`;
