/** A sheet being filled in, cell by cell. */
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";

interface Cell {
  readonly value: LogbookValue;
  readonly format: string;
  readonly formula: string;
}

const nothing: Cell = { value: "", format: "General", formula: "" };

export class Page {
  private readonly rows: Cell[][] = [];

  put(row: number, column: number, value: LogbookValue, format = "General", formula = ""): void {
    while (this.rows.length <= row) this.rows.push([]);
    (this.rows[row] as Cell[])[column] = { value, format, formula };
  }

  at(row: number, column: number): LogbookValue {
    return this.rows[row]?.[column]?.value ?? "";
  }

  cells(sheet: string): SheetCells {
    const width = Math.max(0, ...this.rows.map((row) => row.length));
    const full = this.rows.map((row) =>
      Array.from({ length: width }, (_, at) => row[at] ?? nothing),
    );
    return {
      sheet,
      row: 0,
      column: 0,
      values: full.map((row) => row.map(({ value }) => value)),
      formulas: full.map((row) => row.map(({ formula }) => formula)),
      formats: full.map((row) => row.map(({ format }) => format)),
    };
  }
}
