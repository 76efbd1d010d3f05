/** A block as the grid's engine says it: whole rows and columns have no number at one end. */
import { lastColumn, lastRow } from "../../sheet/spreadsheet-limits";
import type { IUnitRange } from "@univerjs/core";
import type { ReadBlock } from "./readers";

const or = (given: number, otherwise: number): number =>
  Number.isFinite(given) ? given : otherwise;

export const blockOf = ({ sheetId, range }: IUnitRange): ReadBlock => ({
  sheet: sheetId,
  top: or(range.startRow, 0),
  left: or(range.startColumn, 0),
  bottom: or(range.endRow, lastRow),
  right: or(range.endColumn, lastColumn),
});
