/** Cells of the table's own sheet, in formulas. A place that does not move carries its dollar signs. */
import { columnLetters } from "../../sheet/cell-name";
import type { Place } from "../../sheet/area";

/** Row and column counted from the table's first cell. */
export class Refer {
  /** @param origin where the table's first cell stands on its sheet */
  constructor(private readonly origin: Place) {}

  private cell(row: number, column: number, beforeColumn: string, beforeRow: string): string {
    const letters = columnLetters(this.origin.column + column);
    return `${beforeColumn}${letters}${beforeRow}${String(this.origin.row + row + 1)}`;
  }

  /** $B$3: the same for all. */
  fixed(row: number, column: number): string {
    return this.cell(row, column, "$", "$");
  }

  /** C$12: the row's, whichever column it is used in. */
  inRow(row: number, column: number): string {
    return this.cell(row, column, "", "$");
  }

  /** $B13: the column's, whichever row it is used in. */
  inColumn(row: number, column: number): string {
    return this.cell(row, column, "$", "");
  }
}
