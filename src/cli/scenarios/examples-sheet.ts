/** Every function once, beside what it must show: the examples of the catalogue that give one value. */
import { catalogue } from "../../functions/catalogue";
import type { BookCell, BookSheet } from "../../sheet/book";
import { heading, title, words, worked } from "../../workbook/sample/cells";

/** The row of the first example, counted from 1. */
const firstRow = 4;

const single = catalogue.filter(({ example }) => !Array.isArray(example.gives));

/** An example is given to ten digits at most. */
const agreement = (row: number, isNumber: boolean): string =>
  isNumber ? `=ABS(B${row}-C${row})<=0.0000001*ABS(C${row})` : `=B${row}=C${row}`;

const rowOf = (entry: (typeof single)[number], place: number): BookCell[] => {
  const gives = entry.example.gives as string | number | boolean;
  return [
    words(entry.id),
    worked(entry.example.formula),
    { value: gives, style: "words" },
    worked(agreement(firstRow + place, typeof gives === "number")),
  ];
};

export const examplesSheet: BookSheet = {
  name: "Examples",
  rows: [
    [title("Every function, once")],
    [],
    ["Function", "Here", "Expected", "Agrees"].map((head) => heading(head)),
    ...single.map(rowOf),
    [],
    [
      words("Differ"),
      worked(`=COUNTIF(D${firstRow}:D${firstRow + single.length - 1},FALSE)`, "0"),
      { value: 0, style: "words" },
    ],
  ],
  columnWidths: [24, 40, 40, 12],
  tables: [],
  frozenRows: 3,
};
