/** checks.xlsx: every published check as live formulas: expected, computed, agrees; and a chart. */
import { sources } from "../../core/reference/sources";
import { checks } from "../../functions/uncertainty/checks";
import type { Check } from "../../functions/uncertainty/checks/check";
import type { Book, BookCell, BookSheet } from "../../sheet/book";
import { heading, title, words, worked } from "../../workbook/sample/cells";
import { dataSheet } from "./checks/data-sheet";
import { liveFormulas } from "./checks/live-formulas";
import { numAcc4Sheet } from "./checks/num-acc4-sheet";
import { spreadSheet } from "./checks/spread-sheet";
import { uncertaintySheet } from "./checks/uncertainty-sheet";
import { sampleOf } from "./sample";
import { startSheet } from "../../workbook/sample/start-sheet";

const sheetName = "Checks";
const headRow = 3;
const first = headRow + 1;

const decimalsOf = ({ expected }: Check): number => expected.split(".")[1]?.length ?? 0;

const formatOf = (decimals: number): string => (decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`);

const agreement = (formula: string): BookCell => ({ ...worked(formula), align: "center" });

function checkRow(check: Check, place: number): BookCell[] {
  const formula = liveFormulas[check.check];
  if (formula === undefined) throw new RangeError(`"${check.check}" has no live formula`);
  const row = String(first + place);
  const decimals = decimalsOf(check);
  const source = sources[check.source] + (check.where ? `: ${check.where}` : "");
  const within: BookCell =
    check.within === undefined ? { style: "words" } : { value: check.within, style: "words" };
  return [
    { value: place + 1, format: "0", style: "words", align: "center" },
    words(check.check),
    words(source),
    { value: Number(check.expected), format: formatOf(decimals), style: "words" },
    { value: decimals, format: "0", style: "words" },
    within,
    worked(formula, formatOf(decimals + 3)),
    agreement(
      `=IF(IF(F${row}="",ROUND(G${row},E${row})=D${row},ABS(G${row}-D${row})<=D${row}*F${row}),"agrees","differs")`,
    ),
    worked(
      `=ROUND(100*ABS(G${row}-D${row})/IF(F${row}="",0.5/10^E${row},D${row}*F${row}),1)`,
      "0.0",
    ),
    { value: 100, format: "0", style: "words" },
  ];
}

const heads: readonly (readonly [string, string])[] = [
  ["No.", "The check's number, as in the chart."],
  ["Check", "What is compared."],
  ["Source", "Where the figure is printed."],
  ["Expected", "As printed."],
  ["Decimals", "As many as are printed: the computed figure must round to them."],
  ["Within", "Where a relative difference is allowed instead, that difference."],
  ["Computed here", "Worked out by the formulas in this workbook."],
  ["Agrees", "It agrees when the computed figure rounds to the printed one, or lies within."],
  [
    "Difference, % of allowed",
    "Half of the last printed digit, or the difference allowed, is 100 %.",
  ],
  ["Allowed, %", "The line that no check may cross."],
];

const last = first + checks.length - 1;
const column = (place: number) => ({
  sheet: sheetName,
  row: headRow,
  column: place,
  rows: checks.length,
  columns: 1,
});
const named = (place: number) => ({ sheet: sheetName, row: headRow - 1, column: place });

const checksSheet: BookSheet = {
  name: sheetName,
  rows: [
    [title("Checks against published figures")],
    [
      {
        formula: `="In agreement: "&COUNTIF(H${String(first)}:H${String(last)},"agrees")&" of "&COUNTA(H${String(first)}:H${String(last)})`,
        style: "calculated",
      },
    ],
    heads.map(([name, note]) => heading(name, note)),
    ...checks.map(checkRow),
  ],
  columnWidths: [6, 56, 60, 14, 10, 10, 16, 10, 14, 10],
  tables: [],
  frozenRows: headRow,
  frozenColumns: 2,
  print: {
    area: { row: 0, column: 0, rows: last, columns: heads.length },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: headRow - 1, rows: 1 },
  },
};

const chartRows = 26;
const chartColumns = 12;

const chartSheet: BookSheet = {
  name: "How close",
  rows: [
    [title("How close the checks come")],
    [words("The numbers are those of the sheet Checks. 100 % is the most that rounding allows.")],
  ],
  columnWidths: Array.from({ length: chartColumns }, () => 10),
  tables: [],
  frozenRows: 2,
  charts: [
    {
      title: "How far each computed figure is from the printed one",
      description:
        "Points of the difference between computed and printed figure, in percent of what rounding allows, for each check by its number; all of them lie under the line at 100 percent.",
      acrossTitle: "Number of the check",
      upTitle: "Difference, % of what is allowed",
      over: { row: 3, column: 0, rows: chartRows, columns: chartColumns },
      series: [8, 9].map((place) => ({ name: named(place), across: column(0), up: column(place) })),
    },
  ],
  print: {
    area: { row: 0, column: 0, rows: chartRows + 4, columns: chartColumns + 1 },
    landscape: true,
    fitToWidth: true,
  },
};

const checksBook = (): Book => ({
  name: "Checks",
  sheets: [
    startSheet({
      title: "Does Titrebook compute what is published?",
      about:
        "Every figure that Titrebook is checked against, with its source, beside what the formulas in this workbook make of it.",
      steps: [
        "Open the sheet Checks. Each row is one published figure: expected, computed here, and whether they agree.",
        "Select a cell under Computed here to see the formula that it comes from.",
        "Change a reading on the sheet Data, or a figure on the sheet Uncertainty, and see which checks no longer agree. Undo brings it back.",
        "The sheet How close draws how close each comes: 100 % is the most that rounding to the printed digits allows.",
      ],
    }),
    checksSheet,
    chartSheet,
    dataSheet,
    spreadSheet,
    uncertaintySheet,
    numAcc4Sheet,
  ],
});

export const checksWorkbook = sampleOf("checks.xlsx", checksBook);
