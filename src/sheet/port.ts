/**
 * What we need of a spreadsheet, in six verbs: read, write, watch, fileBytes, openFile, capabilities. Values
 * only: no handle of any program passes through here, so the same pane runs on every host.
 *
 * A fault is a value, never an exception.
 */
import type { Block } from "./area";
import type { Capabilities } from "./port/capabilities";
import type { Fault } from "./port/fault";
import type { CellScalar } from "./port/scalar";
import type { Shortfall, Step } from "./port/step";

export type { Block, CellPlace } from "./area";

export type { Capabilities } from "./port/capabilities";
export { type Fault, type FaultCode, fault, isFault } from "./port/fault";
export type { Chart, Content, Decoration, Shortfall, Step, Style } from "./port/step";
export type { CellScalar } from "./port/scalar";

/** What a cell holds: "" where there is nothing. */
export type CellContent = CellScalar | { readonly error: string };

export type Question =
  /** The cells of a block: all of it can be much to hand over. */
  | { readonly ask: "cells"; readonly block: Block }
  /** What the cells of a block show, without formulas and formats. */
  | { readonly ask: "values"; readonly block: Block }
  /** The cells of a sheet whose formulas show errors. */
  | { readonly ask: "errors"; readonly sheet: string }
  /** A table by name, in any case. */
  | { readonly ask: "table"; readonly name: string }
  /** Every sheet of the workbook. */
  | { readonly ask: "sheets" }
  /** Every name of the workbook that a table could not take. */
  | { readonly ask: "names" }
  /** The one cell that is active in what is selected. */
  | { readonly ask: "selection" };

/**
 * Answers hold results: whoever reads waits until a calculation under way is done. A function of an
 * add-in may still be at it, in the spreadsheet program: its cell holds the error #BUSY! then.
 */
export interface Cells {
  readonly kind: "cells";
  readonly block: Block;
  readonly values: readonly (readonly CellContent[])[];
  /** With the equals sign; "" where the cell holds no formula. */
  readonly formulas: readonly (readonly string[])[];
  /** Number formats as the spreadsheet writes them; "General" where none was given. */
  readonly formats: readonly (readonly string[])[];
}

export interface Values {
  readonly kind: "values";
  readonly block: Block;
  readonly values: Cells["values"];
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

/** Blocks of cells, none when there are no such cells. */
export interface Areas {
  readonly kind: "areas";
  readonly blocks: readonly Block[];
}

export type Found = Cells | Values | Areas | Table | Sheets | Names | Nothing;

export interface Event {
  /**
   * Another cell is selected; some cell holds something else; results were worked out, which is not told
   * of everywhere; or another workbook stands where one stood,
   * which is told of as a change as well.
   */
  readonly event: "selection" | "change" | "calculation" | "workbook";
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
  /** Opens an .xlsx file as a new workbook, saved nowhere yet. The one that is open stays as it is. */
  openFile(bytes: Uint8Array): Promise<undefined | Fault>;
}
