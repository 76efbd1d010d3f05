/** How large a sheet, and how long a cell, every spreadsheet program lets be. */
export const sheetLimits = {
  rows: 1_048_576,
  columns: 16_384,
  /** Characters of a text in a cell. */
  text: 32_767,
  /** Characters of a formula. */
  formula: 8192,
} as const;

/** Counted from 0. */
export const lastRow = sheetLimits.rows - 1;
export const lastColumn = sheetLimits.columns - 1;
