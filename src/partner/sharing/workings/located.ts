/** Cells that a formula refers to: how many, and how all of them or one of them is written. */
import { columnLetters } from "../../../sheet/cell-name";
import type { Edges } from "../../../sheet/formula/reference";
import { limits } from "../../../xlsx/limits";
import type { Facts } from "../facts";
import type { Home, Operand } from "./standing";
import { sheetPrefix } from "../../../sheet/sheet-prefix";

export interface Located {
  readonly rows: number;
  readonly columns: number;
  readonly whole: Operand;
  /** Counted from 0. */
  cell(row: number, column: number): Operand;
}

/** What is around the formula that is looked at. */
export interface Around {
  readonly facts: Facts;
  /** Of the first cell that has a formula of this form; the others have theirs. */
  readonly home: Home;
  readonly pieces: readonly string[];
  /** Cells of the formula's own row that it goes by: found while it is written out. */
  readonly ownRow: OwnRowCell[];
}

/** A cell in the row of the formula: a piece of its text, or a column of its table. */
export type OwnRowCell = { readonly piece: number } | { readonly column: number };

export const same =
  (text: string): Operand =>
  () =>
    text;

/** One value, written the same everywhere. */
export const single = (text: string): Located => ({
  rows: 1,
  columns: 1,
  whole: same(text),
  cell: () => same(text),
});

/** Cells that stand where they stand, whatever cell the formula is in. */
export function fixedBlock(sheet: string, edges: Edges, whole: Operand): Located {
  const { top = 0, left = 0, bottom = limits.rows - 1, right = limits.columns - 1 } = edges;
  return {
    rows: bottom - top + 1,
    columns: right - left + 1,
    whole,
    cell: (row, column) =>
      same(`${sheetPrefix(sheet)}$${columnLetters(left + column)}$${String(top + row + 1)}`),
  };
}
