/** What cells may hold, and what a function must say of it: the places where programs differ. */
import type { BookCell, BookSheet } from "../../sheet/book";
import { heading, title, words, worked } from "../../workbook/sample/cells";

interface Tried {
  readonly what: string;
  /** In column B; nothing for an empty cell. */
  readonly holds?: string | number | boolean;
  readonly formulaHolds?: string;
  readonly format?: string;
  /** With B for its cell: "=TITRE.ACIDVALUE(2.3,0.1,B)". */
  readonly formula: string;
  /** "missing" is #N/A, "wrong" is #VALUE!; a word of its own, so that no program takes it for an error. */
  readonly expected: "missing" | "wrong" | number;
}

const firstRow = 4;
const acid = "=TITRE.ACIDVALUE(2.3,0.1,B)";

const tried: readonly Tried[] = [
  { what: "a figure", holds: 10, formula: acid, expected: 1.2903 },
  { what: "an empty cell where a figure is needed", formula: acid, expected: "missing" },
  { what: "a nought where a figure is needed", holds: 0, formula: acid, expected: "missing" },
  { what: "a text that is empty", formulaHolds: '=""', formula: acid, expected: "missing" },
  { what: "a space", holds: " ", formula: acid, expected: "missing" },
  { what: "a text", holds: "ten", formula: acid, expected: "wrong" },
  { what: "a figure typed as text", holds: "10.0 g", formula: acid, expected: "wrong" },
  { what: "TRUE", holds: true, formula: acid, expected: "wrong" },
  { what: "#N/A", formulaHolds: "=NA()", formula: acid, expected: "missing" },
  { what: "#DIV/0!", formulaHolds: "=1/0", formula: acid, expected: "wrong" },
  { what: "a negative figure", holds: -10, formula: acid, expected: "wrong" },
  {
    what: "a figure with a format of its own",
    holds: 10,
    format: '0.00" g"',
    formula: acid,
    expected: 1.2903,
  },
  {
    what: "an empty cell among titres",
    formula: "=TITRE.CORRECTED({2.4,2.6},B)",
    expected: "missing",
  },
  {
    what: "the word neutralised",
    holds: "neutralised",
    formula: "=TITRE.CORRECTED({2.4,2.6},B)",
    expected: 2.5,
  },
  { what: "nothing given for blanks", formula: "=TITRE.CORRECTED({2.4,2.6})", expected: 2.5 },
  {
    what: "an optional argument left out",
    holds: 1.2903,
    formula: "=TITRE.FFAFROMACIDVALUE(B)",
    expected: 0.6486,
  },
  {
    what: "an optional argument left empty",
    holds: 1.2903,
    formula: "=TITRE.FFAFROMACIDVALUE(B,)",
    expected: 0.6486,
  },
  {
    what: "an assay typed as a fraction",
    holds: 0.9,
    formula: '=TITRE.NEUTRALISER(91.5,1.2903,"KOH",B)',
    expected: "wrong",
  },
  {
    what: "a percentage formatted as one",
    holds: 0.9,
    format: "0%",
    formula: '=TITRE.NEUTRALISER(91.5,1.2903,"KOH",B)',
    expected: "wrong",
  },
];

const shownAs = (row: number): string =>
  `=IF(ISNA(C${row}),"missing",IF(ISERROR(C${row}),"wrong",C${row}))`;

const rowOf = (each: Tried, place: number): BookCell[] => {
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
    worked(each.formula.replace(/\bB\b/, `B${row}`)),
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
    ...tried.map(rowOf),
    [],
    [words("Differ"), worked(`=COUNTIF(F${firstRow}:F${firstRow + tried.length - 1},FALSE)`, "0")],
  ],
  columnWidths: [40, 16, 16, 16, 14, 10],
  tables: [],
  frozenRows: 3,
};
