/** Where inside a range a cell stands, counted from 1. Absent for a single cell. */
export interface Place {
  readonly row: number;
  readonly column: number;
}
