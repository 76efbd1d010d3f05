/** What a host is asked to do to a workbook, as values. */
import type { Block } from "../area";
import type { CellScalar } from "./scalar";

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
