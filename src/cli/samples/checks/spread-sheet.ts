/** What SPREAD says of each set of readings, one table below another. */
import type { BookCell, BookSheet } from "../../../sheet/book";
import { copies, heading, spilled, title, words, worked } from "../../../workbook/sample/cells";
import { columnOf } from "./data-sheet";

const sheet = "Spread";

interface Block {
  readonly id: string;
  readonly heading: string;
  readonly formula: string;
}

const spread = (cells: string, confidence?: number): string =>
  confidence === undefined
    ? `=TITRE.SPREAD(${cells})`
    : `=TITRE.SPREAD(${cells},,${String(confidence)})`;

const blocks: readonly Block[] = [
  {
    id: "uranium, 90 %",
    heading: "Uranium ratios: two-sided 90 % is one-sided 95 %",
    formula: spread(columnOf("uranium"), 90),
  },
  {
    id: "strengths, 95 %",
    heading: "Breaking strengths, 95 %",
    formula: spread(columnOf("strengths")),
  },
  {
    id: "strengths, 99 %",
    heading: "Breaking strengths, 99 %",
    formula: spread(columnOf("strengths"), 99),
  },
  { id: "temperatures", heading: "Twenty temperatures", formula: spread(columnOf("temperatures")) },
  {
    id: "three",
    heading: "The ninth to the eleventh temperature: 2 degrees of freedom",
    formula: spread(columnOf("temperatures", 3, 9)),
  },
  {
    id: "eleven",
    heading: "The first eleven temperatures: 10 degrees of freedom",
    formula: spread(columnOf("temperatures", 11)),
  },
  {
    id: "seventeen, 99 %",
    heading: "The first seventeen temperatures, 99 %: 16 degrees of freedom",
    formula: spread(columnOf("temperatures", 17), 99),
  },
];

/** SPREAD's fifteen rows, its heading above, an empty row below. */
const spreadRows = 15;
const blockRows = spreadRows + 2;
const rowsAbove = 3;

/** Rows of SPREAD, counted from 0. */
const figures = { deviation: 2, "half-width": 5, G: 7, "critical G": 9 } as const;

export function spreadCell(id: string, figure: keyof typeof figures): string {
  const place = blocks.findIndex((block) => block.id === id);
  if (place < 0) throw new RangeError(`there is no spread "${id}"`);
  return `${sheet}!$B$${String(rowsAbove + place * blockRows + 2 + figures[figure])}`;
}

const rows: readonly (readonly (BookCell | null)[])[] = [
  [title("Spread of the published readings")],
  [words("The function names its rows for titres in mL; here they have the unit of the readings.")],
  [],
  ...blocks.flatMap(({ heading: name, formula }) => [
    [heading(name), { style: "heading" } as const],
    [worked(formula), ...spilled("0")],
    ...copies(spreadRows - 1, spilled("", "0.0000")),
    [],
  ]),
];

export const spreadSheet: BookSheet = {
  name: sheet,
  rows,
  columnWidths: [56, 64],
  tables: [],
  frozenRows: 2,
  print: {
    area: { row: 0, column: 0, rows: rows.length, columns: 2 },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: 0, rows: 2 },
  },
};
