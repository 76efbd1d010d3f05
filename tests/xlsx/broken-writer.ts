/** What a broken writer is given to write. */
import type { Book } from "../../src/sheet/book";
import type { Edit } from "../../src/xlsx";

export const setFormula = (row: number, column: number, formula: string): Edit => ({
  do: "set-cell",
  sheet: "Data",
  row,
  column,
  content: { kind: "formula", formula, result: 1 },
});

/** A heading and a figure beside each other twice, and a formula. */
export const book = (formula: string): Book => ({
  name: "log",
  sheets: [
    {
      name: "Log",
      rows: [
        [{ value: "Titre, mL" }, { value: "Acid value" }],
        [{ value: 2.3 }, { formula, results: [[1]] }],
      ],
      columnWidths: [],
      tables: [],
      frozenRows: 0,
    },
  ],
});
