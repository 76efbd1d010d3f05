/** A sheet's cells as they are filled in, in any order. */
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";

export class Grid {
  private readonly held = new Map<
    string,
    { value: LogbookValue; formula: string; format: string }
  >();
  private rows = 0;
  private columns = 0;

  put(row: number, column: number, value: LogbookValue, formula = "", format = "General"): void {
    this.held.set(`${String(row)} ${String(column)}`, { value, formula, format });
    this.rows = Math.max(this.rows, row + 1);
    this.columns = Math.max(this.columns, column + 1);
  }

  cells(sheet: string): SheetCells {
    const each = <T>(
      of: (cell: { value: LogbookValue; formula: string; format: string } | undefined) => T,
    ): T[][] =>
      Array.from({ length: this.rows }, (_, row) =>
        Array.from({ length: this.columns }, (__, column) =>
          of(this.held.get(`${String(row)} ${String(column)}`)),
        ),
      );
    return {
      sheet,
      row: 0,
      column: 0,
      values: each((cell) => cell?.value ?? ""),
      formulas: each((cell) => cell?.formula ?? ""),
      formats: each((cell) => cell?.format ?? "General"),
    };
  }
}
