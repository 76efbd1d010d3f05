/** The published readings, a column for each set. */
import { columnLetters } from "../../../sheet/cell-name";
import type { BookCell, BookSheet } from "../../../sheet/book";
import { heading, title, words } from "../../../workbook/sample/cells";

const sheet = "Data";

interface DataSet {
  readonly id: string;
  readonly heading: string;
  readonly source: string;
  readonly format: string;
  readonly values: readonly number[];
}

// prettier-ignore
const sets: readonly DataSet[] = [
  {
    id: "uranium",
    heading: "Uranium isotope ratios",
    source: "e-Handbook 1.3.5.17.1 (Tietjen and Moore 1972)",
    format: "0.00",
    values: [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57],
  },
  {
    id: "strengths",
    heading: "Breaking strengths, lbf",
    source: "ASTM E178 (commonly cited)",
    format: "0",
    values: [568, 570, 570, 570, 572, 572, 572, 578, 584, 596],
  },
  {
    id: "textbook",
    heading: "Ten textbook values",
    source: "Rorabacher 1991",
    format: "0.000",
    values: [0.189, 0.167, 0.187, 0.183, 0.186, 0.182, 0.181, 0.184, 0.181, 0.177],
  },
  {
    id: "temperatures",
    heading: "Twenty temperatures, C",
    source: "GUM 4.4.3",
    format: "0.00",
    values: [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
      100.33, 100.42, 100.68, 100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
    ],
  },
  {
    id: "silver nitrate",
    heading: "Silver nitrate into chloride, mL",
    source: "Potentiometric titration (commonly cited)",
    format: "0.00",
    values: [5, 15, 20, 22, 23, 23.5, 23.8, 24, 24.1, 24.2, 24.3, 24.4, 24.5, 24.6, 24.7, 25],
  },
  {
    id: "its probe",
    heading: "What the probe showed, V",
    source: "Potentiometric titration (commonly cited)",
    format: "0.000",
    values: [
      0.062, 0.085, 0.107, 0.123, 0.138, 0.146, 0.161, 0.174, 0.183, 0.194, 0.233, 0.316, 0.34,
      0.351, 0.358, 0.373,
    ],
  },
];

/** Rows above the readings. */
const rowsAbove = 4;

/** The cells of a set; or so many of them, from one counted from 1. */
export function columnOf(id: string, count?: number, from = 1): string {
  const place = sets.findIndex((set) => set.id === id);
  const set = sets[place];
  if (!set) throw new RangeError(`there is no set of readings "${id}"`);
  const letters = columnLetters(place);
  const first = rowsAbove + from;
  const last = first + (count ?? set.values.length) - 1;
  return `${sheet}!$${letters}$${String(first)}:$${letters}$${String(last)}`;
}

const most = Math.max(...sets.map(({ values }) => values.length));

const rows: readonly (readonly (BookCell | null)[])[] = [
  [title("Published readings")],
  [words("As printed in their sources. The sheet Spread works on them.")],
  sets.map((set) => heading(set.heading)),
  sets.map((set) => ({ ...words(set.source), style: "heading" as const })),
  ...Array.from({ length: most }, (_, row) =>
    sets.map(({ values, format }): BookCell | null => {
      const value = values[row];
      return value === undefined ? null : { value, format, style: "input" };
    }),
  ),
];

export const dataSheet: BookSheet = {
  name: sheet,
  rows,
  columnWidths: sets.map(() => 30),
  tables: [],
  frozenRows: rowsAbove,
  inputs: sets.map(({ heading: what, source, values }, column) => ({
    area: { row: rowsAbove, column, rows: values.length, columns: 1 },
    help: `${what}: as printed in ${source}. Change one and see the check fail.`,
  })),
  print: {
    area: { row: 0, column: 0, rows: rows.length, columns: sets.length },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: 2, rows: 2 },
  },
};
