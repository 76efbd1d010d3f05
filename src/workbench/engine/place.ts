import { columnLetters } from "../../workbook/column-letters";

export type { CellPlace } from "../../workbook/area";

/** A1 for the first cell. */
export const addressOf = (row: number, column: number): string =>
  `${columnLetters(column)}${row + 1}`;
