/** How much of a file is taken on. Data, read by the code, its sentences and the tests. */
import { sheetLimits } from "../sheet/spreadsheet-limits";

export const limits = {
  /** Bytes of all parts together, unpacked; also of the file itself. */
  unpackedBytes: 100 * 1024 * 1024,
  cells: 1_000_000,
  /** Parts that shrink more than this, and are larger than the next figure, are made to harm. */
  packedTimes: 200,
  packedTimesFrom: 1024 * 1024,
  entries: 10_000,
  /** How deep elements may stand inside one another. */
  depth: 100,
  /** Elements in a part that is held whole: any but sheets and texts. */
  elements: 1_000_000,
  /** Edits and areas that may lie over each other; no sound sheet comes near. */
  overlapping: 20_000,
  /** Charts of a sheet, series of a chart and points of a series that are read to be drawn. */
  charts: 500,
  chartSeries: 255,
  chartPoints: 100_000,
  rows: sheetLimits.rows,
  columns: sheetLimits.columns,
  /** Characters a column can be wide. */
  width: 255,
  /** Points a row can be high. */
  height: 409.5,
  /** Characters in a cell. */
  text: sheetLimits.text,
  /** Characters in a number format. */
  format: 255,
  /** Formats of cells a workbook can hold. */
  styles: 65_000,
  /** Characters a list of words may take in a choice. */
  choice: 255,
} as const;
