/** A sheet that holds one table: a title, the headings, and a row of cells for each record. */
import type { BookCell, BookInput, BookSheet, BookValue } from "../../sheet/book";
import type { Column, TableShape } from "./column";

/** What was typed, by heading. Calculated columns fill themselves. */
export type Entry = Readonly<Record<string, BookValue>>;

/** Rows above the headings: the title and one of guidance. */
const rowsAbove = 2;

const heading = (column: Column): BookCell => ({
  value: column.heading,
  style: "heading",
  note: column.note,
});

function cellFor(column: Column, entry: Entry): BookCell {
  const format = column.format === undefined ? {} : { format: column.format };
  if (column.formula !== undefined)
    return { formula: column.formula, style: "calculated", ...format };
  const value = entry[column.heading];
  return value === undefined ? { style: "input", ...format } : { value, style: "input", ...format };
}

const inputIn = ({ note, choices }: Column, column: number, rows: number): BookInput => ({
  area: { row: rowsAbove + 1, column, rows, columns: 1 },
  help: note,
  // A file cannot list words that hold a comma.
  ...(choices?.every((word) => !word.includes(",")) ? { words: choices } : {}),
});

/** What a page on its long side holds in letters one can read. */
const pageCharacters = 190;

const charactersIn = ({ columns }: TableShape): number =>
  columns.reduce((sum, { width }) => sum + width, 0);

export function tableSheet(shape: TableShape, entries: readonly Entry[]): BookSheet {
  const unknown = entries
    .flatMap((entry) => Object.keys(entry))
    .find((name) => !shape.columns.some((column) => column.heading === name));
  if (unknown !== undefined) throw new RangeError(`${shape.name} has no column "${unknown}"`);
  return {
    name: shape.name,
    rows: [
      [{ value: shape.title, style: "title" }],
      [{ value: shape.guidance, style: "words" }],
      shape.columns.map(heading),
      ...entries.map((entry) => shape.columns.map((column) => cellFor(column, entry))),
    ],
    columnWidths: shape.columns.map((column) => column.width),
    tables: [
      {
        name: shape.name,
        row: rowsAbove,
        column: 0,
        rows: entries.length + 1,
        columns: shape.columns.length,
      },
    ],
    frozenRows: rowsAbove + 1,
    // The date, and what the row is about.
    frozenColumns: 2,
    inputs: shape.columns.flatMap((column, place) =>
      column.kind === "input" && entries.length > 0 ? [inputIn(column, place, entries.length)] : [],
    ),
    // No area: rows that are added are to be printed too.
    print: {
      landscape: true,
      fitToWidth: Math.max(1, Math.round(charactersIn(shape) / pageCharacters)),
      repeatRows: { row: rowsAbove, rows: 1 },
      repeatColumns: { column: 0, columns: 2 },
    },
  };
}
