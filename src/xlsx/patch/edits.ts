/**
 * What can be done to a workbook file. Rows and columns count from 0; formulas are written as a cell
 * shows them. All edits of one call are done, or none.
 */
import type { BookStyle } from "../../sheet/book";
import type { Chart } from "../chart/chart";
import type { Area } from "../../sheet/area";
import type { PrintSetup } from "../../sheet/print-setup";
import type { Border, CellValue } from "../model";
import type { Move } from "./beside";
import type { AddIn } from "./pane";
import type { FilterEdit } from "./table/filter";

/** A value to write. A date becomes a number by the workbook's own date system. */
export type NewValue = CellValue | { readonly date: string };

export type Content =
  /** A text stays a text, whatever it begins with; "" empties the cell. */
  | { readonly kind: "value"; readonly value: NewValue }
  | {
      readonly kind: "formula";
      /** With its equals sign, English names, commas. */
      readonly formula: string;
      /** What it comes to; undefined where nobody here can say: whoever opens the file works it out. */
      readonly result: CellValue | undefined;
      /** What it answers over more cells than its own, row by row, its own result first. */
      readonly spilled?: readonly (readonly CellValue[])[];
    }
  /** What an unchanged formula now comes to; also for cells an array formula answers in. */
  | { readonly kind: "result"; readonly value: CellValue }
  /** Emptied; its look stays. */
  | { readonly kind: "nothing" }
  /** Only its look changes. */
  | { readonly kind: "keep" };

/** Changes to how a cell looks; what is not given stays. */
export interface LookChange {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underlined?: boolean;
  readonly struck?: boolean;
  /** In points. */
  readonly size?: number;
  /** #rrggbb; "none" takes it away. */
  readonly colour?: string;
  readonly fill?: string;
  readonly wraps?: boolean;
  /** "general": figures right, words left. */
  readonly horizontal?: "left" | "center" | "right" | "general";
  /** A side that is undefined here loses its line; one that is not named keeps it. */
  readonly borders?: Partial<Record<"left" | "right" | "top" | "bottom", Border | undefined>>;
  /** Room before a text, in letters. */
  readonly indent?: number;
  readonly vertical?: "top" | "center" | "bottom";
}

export interface Dress {
  /** A number format as the spreadsheet writes it: "0.00". Not given: as the cell has it. */
  readonly format?: string;
  readonly look?: BookStyle | LookChange;
  /** Index into the workbook's looks: the cell takes this one, whatever it has; the rest changes it. */
  readonly as?: number;
}

export interface SetCell extends Dress {
  readonly do: "set-cell";
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly content: Content;
  /** Index into the workbook's looks: how a cell looks that has no look of its own. */
  readonly base?: number;
}

/** At the right edge of a table: a heading, and a cell for each row of the table. */
export interface AddColumn extends Dress {
  readonly do: "add-column";
  readonly table: string;
  readonly heading: string;
  /** The column's formula, where it has one; then `cells` are its results. */
  readonly formula?: string;
  readonly cells: readonly NewValue[];
}

/** Below the last row of a table. */
export interface AddRows {
  readonly do: "add-rows";
  readonly table: string;
  /** In each as many as the table has columns. */
  readonly rows: readonly (readonly (Content & Dress)[])[];
}

export type Edit =
  | SetCell
  | AddColumn
  | AddRows
  | { readonly do: "add-sheet"; readonly name: string }
  /** Headings, texts and none twice, stand in the first row of the area or are set there. */
  | {
      readonly do: "add-table";
      readonly sheet: string;
      readonly name: string;
      readonly area: Area;
      /** By heading: the formula of the whole column. */
      readonly formulas?: Readonly<Record<string, string>>;
    }
  /**
   * Lets a table reach over an area that begins where it begins and is no smaller; what stands there
   * becomes part of it. A new column has its heading in the table's first row, or gets it there.
   */
  | {
      readonly do: "grow-table";
      readonly table: string;
      readonly area: Area;
      readonly formulas?: Readonly<Record<string, string>>;
    }
  /** The program that opens the file next works all of it out, whatever results it holds. */
  | { readonly do: "work-out-on-opening" }
  /** The pane of an add-in opens with the file. */
  | ({ readonly do: "open-pane" } & AddIn)
  | { readonly do: "define-name"; readonly name: string; readonly refersTo: string }
  | {
      readonly do: "set-width";
      readonly sheet: string;
      readonly column: number;
      readonly characters: number;
    }
  /** From then on the row keeps that height, whatever is typed into it; one that is fitted does not. */
  | {
      readonly do: "set-height";
      readonly sheet: string;
      readonly row: number;
      readonly points: number;
      readonly isFitted?: true;
    }
  /** Rows above and columns left of this stay in view. */
  | {
      readonly do: "freeze";
      readonly sheet: string;
      readonly rows: number;
      readonly columns: number;
    }
  | ({ readonly do: "print-setup"; readonly sheet: string } & PrintSetup)
  | {
      readonly do: "add-note";
      readonly sheet: string;
      readonly row: number;
      readonly column: number;
      readonly text: string;
    }
  | ({ readonly do: "filter"; readonly sheet: string } & FilterEdit)
  /** What hangs on cells (links, notes, threads of comments) goes to other cells, all at once. */
  | { readonly do: "move-beside"; readonly sheet: string; readonly moves: readonly Move[] }
  /** Words to choose from; others may be typed as well. Without words, only the help. */
  | {
      readonly do: "offer-words";
      readonly sheet: string;
      readonly area: Area;
      readonly words: readonly string[];
      /** Shown while one of the cells is selected. */
      readonly help?: string;
    }
  | ({ readonly do: "add-chart"; readonly sheet: string } & Chart);
