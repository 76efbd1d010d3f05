/** A cell of a sheet as one number, so that sets of many cells stay small. */
import { sheetLimits } from "../../sheet/spreadsheet-limits";

const { columns } = sheetLimits;

export const keyAt = (row: number, column: number): number => row * columns + column;

export const placeAt = (key: number) => ({
  row: Math.floor(key / columns),
  column: key % columns,
});
