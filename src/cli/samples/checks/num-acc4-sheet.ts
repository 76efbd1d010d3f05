/** The 1001 values of StRD NumAcc4: a sum in which careless arithmetic loses every digit. */
import type { BookCell, BookSheet } from "../../../sheet/book";
import { title, words } from "../../../workbook/sample/cells";

const sheet = "NumAcc4";

/** 1001 = 77 x 13. */
const rowCount = 77;
const columnCount = 13;
const rowsAbove = 3;

/** One 10000000.2, then 500 pairs a tenth below and above. */
const valueAt = (place: number): number => {
  if (place === 0) return 10000000.2;
  return place % 2 === 1 ? 10000000.1 : 10000000.3;
};

export const numAcc4Cells = `${sheet}!$A$${String(rowsAbove + 1)}:$M$${String(rowsAbove + rowCount)}`;

const rows: readonly (readonly (BookCell | null)[])[] = [
  [title("NumAcc4, 1001 values")],
  [
    words(
      "NIST Statistical Reference Datasets, higher difficulty; made by its rule. Row after row.",
    ),
  ],
  [],
  ...Array.from({ length: rowCount }, (_, row) =>
    Array.from({ length: columnCount }, (__, column): BookCell => ({
      value: valueAt(row * columnCount + column),
      format: "0.0",
      style: "input",
    })),
  ),
];

export const numAcc4Sheet: BookSheet = {
  name: sheet,
  rows,
  columnWidths: Array.from({ length: columnCount }, () => 12),
  tables: [],
  frozenRows: rowsAbove,
  inputs: [
    {
      area: { row: rowsAbove, column: 0, rows: rowCount, columns: columnCount },
      help: "A value of NumAcc4, by its rule.",
    },
  ],
  print: {
    area: { row: 0, column: 0, rows: rows.length, columns: columnCount },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: 0, rows: 2 },
  },
};
