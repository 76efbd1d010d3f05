/**
 * A workbook as plain values: what we build samples from, and what the workbench page opens. No host,
 * no file format.
 */
export type BookValue = string | number | boolean;

/** How a cell is meant, from which each host takes its look. */
export type BookStyle = "title" | "heading" | "input" | "calculated" | "words" | "caution";

export interface BookCell {
  readonly value?: BookValue;
  /** With its equals sign, English names, commas. A formula's `value` is its cached result. */
  readonly formula?: string;
  /** A number format as the spreadsheet writes it: "0.00". */
  readonly format?: string;
  readonly style?: BookStyle;
  /** What to type here, shown beside the cell. */
  readonly note?: string;
}

export interface BookTable {
  readonly name: string;
  /** Heading row included; counted from 0. */
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** Counted from 0. */
export interface BookArea {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** How a sheet is printed. */
export interface BookPrint {
  /** What is printed; the whole sheet, when not given. */
  readonly area?: BookArea;
  /** The paper lies on its long side. */
  readonly landscape?: boolean;
  /** All columns on one page's width; as many pages down as it takes. */
  readonly fitToWidth?: boolean;
  /** Rows that stand again at the top of each page. */
  readonly repeatRows?: { readonly row: number; readonly rows: number };
}

export interface BookSheet {
  readonly name: string;
  readonly rows: readonly (readonly (BookCell | null)[])[];
  /** Widths in characters, from the first column on. */
  readonly columnWidths: readonly number[];
  readonly tables: readonly BookTable[];
  readonly frozenRows: number;
  readonly frozenColumns?: number;
  readonly print?: BookPrint;
}

export interface Book {
  readonly name: string;
  readonly sheets: readonly BookSheet[];
}
