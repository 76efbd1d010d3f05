/** tests/scenarios.xlsx: what a person opens in the spreadsheet program to tick tests/scenarios.md. */
import type { Book, BookCell, BookSheet } from "../../sheet/book";
import { title, words, worked } from "../../workbook/sample/cells";
import { cellsSheet } from "./cells-sheet";
import { examplesSheet } from "./examples-sheet";

const line = (text: string): BookCell[] => [words(text)];

const start: BookSheet = {
  name: "Start here",
  rows: [
    [title("Titrebook in the spreadsheet program")],
    [],
    line("Follow tests/scenarios.md, with Titrebook loaded. Nothing here is about a real person."),
    line("Examples: every function once, beside what it must show."),
    line("Cells: what a cell may hold, and what a function must say of it."),
    line("Spills: answers over many cells; the rows below and beside them are empty."),
    line("The last rows of Examples and Cells count what differs: both must be 0."),
  ],
  columnWidths: [100],
  tables: [],
  frozenRows: 0,
};

/** Each with room below it for its answer. */
const spills: readonly (readonly [string, string, number])[] = [
  ["Three acid values in one row", "=TITRE.EACHACIDVALUE({2.1,3.1,4.1},{0.1},0.1,{10})", 2],
  [
    "A table of 2 amounts by 3 acid values, with its headings",
    '=TITRE.WHATIF({100;200},"l",{1,2,3},"KOH",90,0.765)',
    6,
  ],
  ["A spread of 15 rows", "=TITRE.SPREAD({2.4,2.5,2.45},0.05)", 17],
  ["The checks: every row must end in agrees or TRUE", "=TITRE.CHECKS()", 2],
];

const spillsSheet: BookSheet = {
  name: "Spills",
  rows: [
    [title("Answers over many cells")],
    [],
    ...spills.flatMap(([what, formula, rows]): (BookCell | null)[][] => [
      [words(what)],
      [worked(formula)],
      ...Array.from({ length: rows }, () => []),
    ]),
  ],
  columnWidths: [44, 30, 16, 16, 12],
  tables: [],
  frozenRows: 0,
};

export const scenariosBook = (): Book => ({
  name: "Titrebook scenarios",
  sheets: [start, examplesSheet, cellsSheet, spillsSheet],
});
