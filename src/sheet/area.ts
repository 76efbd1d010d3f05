/** Where cells stand. Rows and columns count from 0. */

/** One cell of a sheet that is known. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** Cells of a sheet that is known, from their first one on. */
export interface Area extends Place {
  readonly rows: number;
  readonly columns: number;
}

/** One cell of a workbook. */
export interface CellPlace extends Place {
  readonly sheet: string;
}

/** A block of cells on one sheet. */
export interface Block extends Area {
  readonly sheet: string;
}
