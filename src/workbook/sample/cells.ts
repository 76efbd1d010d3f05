/** Cells of the sample sheets, by what they are for. */
import type { BookCell, BookSheet } from "../../sheet/book";

export const title = (value: string): BookCell => ({ value, style: "title" });
export const words = (value: string): BookCell => ({ value, style: "words" });
export const heading = (value: string, note?: string): BookCell => ({
  value,
  style: "heading",
  ...(note === undefined ? {} : { note }),
});
export const caution = (value: string): BookCell => ({ value, style: "caution" });

/** A figure or a word to be changed, with a note that says what it is. */
export const typed = (value: number | string, format: string, note?: string): BookCell => ({
  value,
  style: "input",
  ...(format === "" ? {} : { format }),
  ...(note === undefined ? {} : { note }),
});

export const worked = (formula: string, format?: string): BookCell => ({
  formula,
  style: "calculated",
  ...(format === undefined ? {} : { format }),
});

/** Cells that a formula spills over, "" for words: shown with the digits they deserve, never rounded. */
export const spilled = (...formats: string[]): BookCell[] =>
  formats.map((format) => ({ style: "calculated", ...(format ? { format } : {}) }));

/** A sheet of sentences in one wide column, printed as it is read. */
export const sheetOfSentences = (name: string, rows: BookSheet["rows"]): BookSheet => ({
  name,
  rows,
  columnWidths: [90],
  tables: [],
  frozenRows: 1,
  print: {
    area: { row: 0, column: 0, rows: rows.length, columns: 1 },
    landscape: true,
    fitToWidth: true,
  },
});

export const copies = <T>(count: number, row: T): T[] => Array.from({ length: count }, () => row);
