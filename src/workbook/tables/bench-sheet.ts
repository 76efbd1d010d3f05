/** The sheet "My bench" as it is made: a title, what it is for, and a row for each setting. */
import type { BookCell, BookInput, BookSheet } from "../../sheet/book";
import {
  benchHeadingNotes,
  benchHeadings,
  benchIds,
  benchSettings,
  benchSheetName,
  benchTable,
  type BenchId,
  type BenchSetting,
  type BenchValues,
} from "./bench";

const rowsAbove = 3;
const widths = [26, 16, 14, 60];

/** A figure is a number in its cell, a word a text. */
export const benchCell = (id: BenchId, value: string): string | number =>
  benchSettings[id].limit !== undefined && value !== "" ? Number(value) : value;

function row(id: BenchId, value: string | undefined): BookCell[] {
  const { name, unit, note }: BenchSetting = benchSettings[id];
  return [
    { value: name, style: "words" },
    {
      style: "input",
      align: "left",
      ...(value === undefined || value === "" ? {} : { value: benchCell(id, value) }),
    },
    { value: unit, style: "words" },
    { value: note, style: "words" },
  ];
}

const input = (id: BenchId, at: number): BookInput => {
  const { note, words }: BenchSetting = benchSettings[id];
  return {
    area: { row: rowsAbove + 1 + at, column: 1, rows: 1, columns: 1 },
    help: note,
    ...(words === undefined ? {} : { words }),
  };
};

export const benchSheet = (values: BenchValues): BookSheet => ({
  name: benchSheetName,
  rows: [
    [{ value: "My bench", style: "title" }],
    [
      {
        value:
          "What stays the same. Titrate, Batch and What if begin from it; each can still be changed there.",
        style: "words",
      },
    ],
    [{ value: "Leave empty what you do not know yet.", style: "words" }],
    benchHeadings.map((value): BookCell => ({
      value,
      style: "heading",
      note: benchHeadingNotes[value],
    })),
    ...benchIds.map((id) => row(id, values[id])),
  ],
  columnWidths: widths,
  tables: [
    {
      name: benchTable,
      row: rowsAbove,
      column: 0,
      rows: benchIds.length + 1,
      columns: benchHeadings.length,
    },
  ],
  frozenRows: rowsAbove + 1,
  inputs: benchIds.map(input),
  print: { landscape: true, fitToWidth: 1, repeatRows: { row: rowsAbove, rows: 1 } },
});
