import type { GivenCell } from "../engine/cells";

/** A formula's answers over more than one cell, row by row, its own first. */
export interface SpillState {
  readonly rows: number;
  readonly columns: number;
  readonly values: readonly (readonly GivenCell[])[];
}
