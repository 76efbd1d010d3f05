/** Batch sizes down, acid values across, every cell a live formula; and a chart. */
import { columnLetters } from "../../../sheet/cell-name";
import type { BookCell, BookSheet } from "../../../sheet/book";
import { heading, title, typed, words, worked } from "../../../workbook/sample/cells";
import { given, inputs } from "./inputs";

const sheetName = "What if";

const amounts = [20, 40, 60, 80, 100, 150, 200];
const acidValues = [0.5, 1, 2, 3, 4, 6];

/** Where the two tables begin, counted from 1 as formulas count. */
const catalystHead = 14;
const methanolHead = catalystHead + amounts.length + 5;

const acidColumns = acidValues.map((_, place) => columnLetters(place + 1));
const acidCell = (column: string): string => `${column}$${String(catalystHead)}`;
const oilMass = (row: number): string =>
  `TITRE.OILMASS($A${String(row)},${given.unit},${given.oil})`;

const firstAmount = catalystHead + 3;

const catalystRow = (amount: number, place: number): BookCell[] => {
  const row = firstAmount + place;
  return [
    typed(amount, "0.0"),
    ...acidColumns.map((column) =>
      worked(
        `=TITRE.CATALYST(${oilMass(row)},${acidCell(column)},${given.base},${given.assay},${given.charge},${given.limit})`,
        "0",
      ),
    ),
  ];
};

const methanolRow = (place: number): BookCell[] => {
  const row = methanolHead + 1 + place;
  return [
    worked(`=$A${String(firstAmount + place)}`, "0.0"),
    ...acidColumns.map((column) =>
      worked(
        `=TITRE.METHANOL(${oilMass(row)},${given.ratio},${acidCell(column)},${given.oil})`,
        "0.0",
      ),
    ),
  ];
};

/** The line's name in the chart. */
const head = (column: string): string => `="acid value "&TEXT(${acidCell(column)},"0.0")`;

const blankHead: BookCell = { style: "heading" };

const headRow = (first: string): BookCell[] => [
  heading(first),
  ...acidColumns.map((column): BookCell => ({ formula: head(column), style: "heading" })),
];

const rows: readonly (readonly (BookCell | null)[])[] = [
  [title("What if: catalyst and methanol for a batch")],
  [
    words(
      "Change a batch size, an acid value or any of the figures below: the tables and the chart follow.",
    ),
  ],
  [heading("Given"), blankHead, blankHead],
  ...inputs.map(({ label, value, format, help }) => [words(label), typed(value, format, help)]),
  [
    words("Base charge, % of oil"),
    worked(`=TITRE.CHARGEPERCENT(${given.perLitre},100,${given.oil})`, "0.000"),
  ],
  [],
  [heading("Catalyst, g as weighed"), ...acidValues.map(() => blankHead)],
  [
    heading("Acid value, mg KOH/g"),
    ...acidValues.map((value) => typed(value, "0.0", "Acid value of the oil, mg KOH/g.")),
  ],
  [
    words("As oleic acid, % FFA"),
    ...acidColumns.map((column) => worked(`=TITRE.FFAFROMACIDVALUE(${acidCell(column)})`, "0.00")),
  ],
  headRow("Batch size"),
  ...amounts.map(catalystRow),
  [],
  [heading("Methanol, L at 20 C"), ...acidValues.map(() => blankHead)],
  headRow("Batch size"),
  ...amounts.map((_, place) => methanolRow(place)),
];

const lastRow = rows.length;
const chartColumns = 9;

export const whatIfSheet: BookSheet = {
  name: sheetName,
  rows,
  columnWidths: [36, ...acidValues.map(() => 14), 3],
  tables: [],
  frozenRows: 2,
  frozenColumns: 1,
  inputs: [
    ...inputs.map(({ help, words: choices }, place) => ({
      area: { row: 3 + place, column: 1, rows: 1, columns: 1 },
      help,
      ...(choices ? { words: choices } : {}),
    })),
    {
      area: { row: catalystHead - 1, column: 1, rows: 1, columns: acidValues.length },
      help: "Acid value of the oil, mg KOH/g.",
    },
    {
      area: { row: firstAmount - 1, column: 0, rows: amounts.length, columns: 1 },
      help: "Batch size, in the unit given above.",
    },
  ],
  charts: [
    {
      title: "Catalyst to weigh for a batch",
      description:
        "Lines of catalyst in grams, as weighed, against batch size, one line for each acid value. Every line rises evenly with the batch; the higher the acid value, the steeper.",
      acrossTitle: "Batch size, in the unit given",
      upTitle: "Catalyst, g as weighed",
      over: { row: 2, column: acidValues.length + 2, rows: 24, columns: chartColumns },
      series: acidValues.map((_, place) => ({
        name: { sheet: sheetName, row: catalystHead + 1, column: place + 1 },
        across: {
          sheet: sheetName,
          row: firstAmount - 1,
          column: 0,
          rows: amounts.length,
          columns: 1,
        },
        up: {
          sheet: sheetName,
          row: firstAmount - 1,
          column: place + 1,
          rows: amounts.length,
          columns: 1,
        },
      })),
    },
  ],
  print: {
    area: { row: 0, column: 0, rows: lastRow, columns: acidValues.length + 3 + chartColumns },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: 0, rows: 2 },
  },
};
