import type { Area } from "./area";

/** How a sheet is printed; in a file, what is not given stays as it is. */
export interface PrintSetup {
  /** What is printed: all that is filled in, where it was never said. */
  readonly area?: Area;
  /** The paper lies on its long side. */
  readonly landscape?: boolean;
  /**
   * All columns on one page's width, or on that of so many pages beside one another; as many pages
   * down as it takes.
   */
  readonly fitToWidth?: boolean | number;
  /** The row that begins the second page, whatever room the first still has. */
  readonly secondPage?: number;
  /** Rows that stand again at the top of each page. */
  readonly repeatRows?: { readonly row: number; readonly rows: number };
  /** Columns that stand again at the left of each page. */
  readonly repeatColumns?: { readonly column: number; readonly columns: number };
}
