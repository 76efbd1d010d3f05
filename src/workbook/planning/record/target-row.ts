/**
 * The row a record goes to: the first of the empty rows at a table's end, or a new row below it. A row
 * is empty when nothing was typed into it; formulas may stand in it, waiting for readings.
 */
import { type Logbook, readCell } from "../snapshot";

export interface TargetRow {
  /** Counted from the headings: 1 is the table's first row. */
  readonly row: number;
  /** The table must grow to take it. */
  readonly isNew: boolean;
}

const isTyped = (logbook: Logbook, row: number, column: number): boolean => {
  const { value, formula } = readCell(logbook, row, column);
  return formula === "" && value !== "";
};

const isFilled = (logbook: Logbook, row: number): boolean =>
  logbook.table.headings.some((_, column) => isTyped(logbook, row, column));

export function targetRow(logbook: Logbook): TargetRow {
  const last = logbook.table.block.rows - 1;
  let row = last;
  while (row >= 1 && !isFilled(logbook, row)) row -= 1;
  return { row: row + 1, isNew: row === last };
}
