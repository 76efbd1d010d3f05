/**
 * A workbook as plain values: what we build samples from, and what the workbench page opens. No host,
 * no file format.
 */
import type { Area, Block, CellPlace } from "./area";
import type { PrintSetup } from "./print-setup";

export type BookValue = string | number | boolean;

/** How a cell is meant, from which each host takes its look. */
export type BookStyle =
  "title" | "heading" | "input" | "calculated" | "words" | "caution" | "large";

export interface BookCell {
  readonly value?: BookValue;
  /** With its equals sign, English names, commas. A formula's `value` is its cached result. */
  readonly formula?: string;
  /** A number format as the spreadsheet writes it: "0.00". */
  readonly format?: string;
  readonly style?: BookStyle;
  /** Where it stands in its cell; figures right and words left, when not given. */
  readonly align?: "left" | "center" | "right";
  /** What to type here, shown beside the cell. */
  readonly note?: string;
  /** What the formula comes to, row by row where it answers over more cells than its own. */
  readonly results?: readonly (readonly BookResult[])[];
}

/** What a formula comes to: also an error, by its sign. */
export type BookResult = BookValue | { readonly error: string };

/** Heading row included. */
export interface BookTable extends Area {
  readonly name: string;
}

/** Cells a person types into. */
export interface BookInput {
  readonly area: Area;
  /** Shown while one of the cells is selected. */
  readonly help?: string;
  /** Words to choose from; others may be typed as well. */
  readonly words?: readonly string[];
}

/** Figures of one sheet as lines through points. */
export interface BookChart {
  readonly title: string;
  /** What the picture shows, for those who cannot see it. */
  readonly description: string;
  readonly acrossTitle: string;
  readonly upTitle: string;
  /** Number format of the figures across: "yyyy-mm-dd" for days. */
  readonly acrossFormat?: string;
  /** The cells it lies over. */
  readonly over: Area;
  readonly series: readonly BookSeries[];
}

export interface BookSeries {
  /** The cell that names it. */
  readonly name: CellPlace;
  /** Cells in one row or one column, as many across as up. */
  readonly across: Block;
  readonly up: Block;
}

export interface BookSheet {
  readonly name: string;
  readonly rows: readonly (readonly (BookCell | null)[])[];
  /** Widths in characters, from the first column on. */
  readonly columnWidths: readonly number[];
  readonly tables: readonly BookTable[];
  readonly frozenRows: number;
  readonly frozenColumns?: number;
  readonly print?: PrintSetup;
  readonly inputs?: readonly BookInput[];
  readonly charts?: readonly BookChart[];
}

export interface Book {
  readonly name: string;
  readonly sheets: readonly BookSheet[];
}
