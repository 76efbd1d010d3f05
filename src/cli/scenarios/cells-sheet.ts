/** The cells that tests/scenarios.xlsx tries, each beside what a function must say of it. */
import type { BookCell, BookSheet } from "../../sheet/book";
import { type TriedCell, triedCells, triedFormula } from "../../workbook/checking/tried-cells";
import { heading, title, words, worked } from "../../workbook/sample/cells";

/** Counted from 1. */
const firstRow = 4;

const shownAs = (row: number): string =>
  `=IF(ISNA(C${row}),"missing",IF(ISERROR(C${row}),"wrong",C${row}))`;

const rowOf = (each: TriedCell, place: number): BookCell[] => {
  const row = firstRow + place;
  const held: BookCell = {
    style: "input",
    ...(each.holds === undefined ? {} : { value: each.holds }),
    ...(each.formulaHolds === undefined ? {} : { formula: each.formulaHolds }),
    ...(each.format === undefined ? {} : { format: each.format }),
  };
  return [
    words(each.what),
    held,
    worked(triedFormula(each, `B${row}`)),
    worked(shownAs(row)),
    { value: each.expected, style: "words" },
    worked(
      typeof each.expected === "number" ? `=ABS(D${row}-E${row})<0.000001` : `=D${row}=E${row}`,
    ),
  ];
};

export const cellsSheet: BookSheet = {
  name: "Cells",
  rows: [
    [title("What a cell may hold")],
    [],
    ["What", "The cell", "The function", "It shows", "Expected", "Agrees"].map((head) =>
      heading(head),
    ),
    ...triedCells.map(rowOf),
    [],
    [
      words("Differ"),
      worked(`=COUNTIF(F${firstRow}:F${firstRow + triedCells.length - 1},FALSE)`, "0"),
    ],
  ],
  columnWidths: [40, 16, 16, 16, 14, 10],
  tables: [],
  frozenRows: 3,
};
