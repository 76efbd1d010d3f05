/** A range of cells, row by row. A single value is a range of one. */
import type { Place } from "../../core/problem/place";
import { type Cell, readCell } from "./cell";

export interface Grid {
  readonly rows: number;
  readonly columns: number;
  /** Reading order: along each row, then down. */
  readonly cells: readonly Cell[];
  /** The argument is not there at all: neither a cell nor a range was given. */
  readonly leftOut: boolean;
}

/** What a host hands over for one argument: a value, or rows of values. */
export function readGrid(raw: unknown): Grid {
  if (!Array.isArray(raw)) {
    const cell = readCell(raw);
    return { rows: 1, columns: 1, cells: [cell], leftOut: cell.kind === "left-out" };
  }
  const rows = raw.map((row: unknown): unknown[] => (Array.isArray(row) ? row : [row]));
  // one by one: a whole column is too many arguments for Math.max
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const cells = rows.flatMap((row) =>
    Array.from({ length: columns }, (_, column) => readCell(row[column])),
  );
  return { rows: rows.length, columns, cells, leftOut: false };
}

/** Where a position in reading order stands, counted from 1. */
export const placeIn = (grid: Pick<Grid, "columns">, position: number): Place => ({
  row: Math.floor(position / grid.columns) + 1,
  column: (position % grid.columns) + 1,
});

/** A row or a column: its cells pair by position with any other row or column. */
export const isLine = (grid: Pick<Grid, "rows" | "columns">): boolean =>
  grid.rows <= 1 || grid.columns <= 1;
