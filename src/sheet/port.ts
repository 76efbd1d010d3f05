/**
 * What we need of a spreadsheet, in five verbs: read, write, watch, fileBytes, capabilities. Values
 * only: no handle of any program passes through here, so the same pane runs on every host.
 *
 * A fault is a value, never an exception.
 */
import type { Block } from "./area";
import type { Fault } from "./port/fault";

export type { Block, CellPlace } from "./area";

export { type Fault, type FaultCode, fault, isFault } from "./port/fault";

export type CellScalar = string | number | boolean;

/** What a cell holds: "" where there is nothing. */
export type CellContent = CellScalar | { readonly error: string };

export type Question =
  /** The cells of a block. */
  | { readonly ask: "cells"; readonly block: Block }
  /** A table by name, in any case. */
  | { readonly ask: "table"; readonly name: string }
  /** Every sheet of the workbook. */
  | { readonly ask: "sheets" }
  /** Every name of the workbook that a table could not take. */
  | { readonly ask: "names" }
  /** The one cell that is active in what is selected. */
  | { readonly ask: "selection" };

/** Answers hold results: whoever reads waits until a calculation under way is done. */
export interface Cells {
  readonly kind: "cells";
  readonly block: Block;
  readonly values: readonly (readonly CellContent[])[];
  /** With the equals sign; "" where the cell holds no formula. */
  readonly formulas: readonly (readonly string[])[];
  /** Number formats as the spreadsheet writes them; "General" where none was given. */
  readonly formats: readonly (readonly string[])[];
}

export interface Table {
  readonly kind: "table";
  readonly name: string;
  /** Headings included, a row of totals left out. */
  readonly block: Block;
  readonly headings: readonly string[];
  /** Some of its rows are hidden by a filter. */
  readonly isFiltered: boolean;
  /** A row of totals stands below its last row. */
  readonly hasTotals: boolean;
}

export interface Sheet {
  readonly name: string;
  readonly isProtected: boolean;
  /** The block that holds anything; undefined for an empty sheet. */
  readonly used: Block | undefined;
}

export interface Sheets {
  readonly kind: "sheets";
  readonly sheets: readonly Sheet[];
  /** Sheets can be neither added nor removed. */
  readonly isProtected: boolean;
}

export interface Names {
  readonly kind: "names";
  readonly tables: readonly string[];
  /** Defined names. */
  readonly defined: readonly string[];
}

/** There is no such table, name or sheet. */
export interface Nothing {
  readonly kind: "nothing";
}

export type Found = Cells | Table | Sheets | Names | Nothing;

/** One thing to do to the workbook. A list of them is one undo step, where the host does not say otherwise. */
export type Step =
  | { readonly do: "add-sheet"; readonly name: string }
  | {
      readonly do: "set-cells";
      readonly block: Block;
      /** As many rows, and in each as many cells, as the block has. */
      readonly contents: readonly (readonly Content[])[];
    }
  /** Make a block, headings in its first row, a table. */
  | { readonly do: "add-table"; readonly name: string; readonly block: Block }
  /** Let a table reach to a block that begins where it begins. */
  | { readonly do: "grow-table"; readonly name: string; readonly block: Block }
  | {
      readonly do: "set-width";
      readonly sheet: string;
      readonly column: number;
      readonly characters: number;
    }
  | { readonly do: "freeze-rows"; readonly sheet: string; readonly rows: number }
  /** What to type in a cell, shown beside it. */
  | { readonly do: "add-note"; readonly block: Block; readonly text: string }
  /** Words to choose from in a block; others may be typed as well. */
  | { readonly do: "offer-words"; readonly block: Block; readonly words: readonly string[] }
  /** Only where the program has charts. It follows its cells. */
  | ({ readonly do: "add-chart" } & Chart)
  /** What of its sheet is printed: this block, on one page, or on two of which the second begins at a row. */
  | {
      readonly do: "print-area";
      readonly block: Block;
      readonly landscape: boolean;
      readonly secondPage?: number;
    }
  | { readonly do: "select"; readonly block: Block };

/** A chart of figures against figures. */
export interface Chart {
  readonly sheet: string;
  readonly kind: "lines";
  /** The words of a title; or a reference, with its equals sign, to the cell that holds them. */
  readonly title: string;
  readonly acrossTitle: string;
  readonly upTitle: string;
  /** The figures along the bottom: one column. */
  readonly across: Block;
  /** A line for each, as long as `across`. Its name does not follow a cell. */
  readonly lines: readonly { readonly name: string; readonly values: Block }[];
  /** The cells it lies over. */
  readonly place: Block;
}

export type Content =
  | { readonly kind: "keep" }
  | {
      readonly kind: "value";
      /** A text stays a text, whatever it begins with ("=1+1"); "" empties the cell. */
      readonly value: CellScalar;
      readonly format?: string;
      readonly style?: Style;
    }
  | {
      readonly kind: "formula";
      /** With its equals sign, English names, commas. */
      readonly formula: string;
      readonly format?: string;
      readonly style?: Style;
    };

/** `large` is read at arm's length, on paper. */
export type Style = "title" | "heading" | "input" | "calculated" | "words" | "caution" | "large";

/** What only makes a sheet easier to read or to print: a record stands without it. */
export type Decoration = Extract<
  Step["do"],
  "set-width" | "freeze-rows" | "add-note" | "offer-words" | "add-chart" | "print-area" | "select"
>;

/** All that counts is written, but in more than one piece: undo has to be used more than once. */
export interface Shortfall {
  readonly kind: "shortfall";
  /** What did not work, each once; may be empty. */
  readonly missing: readonly Decoration[];
}

export interface Capabilities {
  readonly kind: "capabilities";
  /** What the program is called in a sentence: "the workbench". */
  readonly program: string;
  readonly canWrite: boolean;
  readonly hasFileBytes: boolean;
  readonly hasCharts: boolean;
}

export interface Event {
  /**
   * Another cell is selected; some cell holds something else; or another workbook stands where one stood,
   * which is told of as a change as well.
   */
  readonly event: "selection" | "change" | "workbook";
}

export interface Host {
  capabilities(): Promise<Capabilities | Fault>;
  /** Answers in the order asked. */
  read(questions: readonly Question[]): Promise<readonly Found[] | Fault>;
  /**
   * Does every step, or none; then one undo takes all of it back, unless the answer is a shortfall.
   * Decorations never keep the rest from being written.
   */
  write(label: string, steps: readonly Step[]): Promise<undefined | Shortfall | Fault>;
  /** Call back on each event until the returned function is called. */
  watch(heard: (event: Event) => void): () => void;
  /** The workbook as an .xlsx file. */
  fileBytes(): Promise<Uint8Array | Fault>;
}
