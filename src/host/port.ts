/**
 * What we need of a spreadsheet, in five verbs: read, write, watch, fileBytes, capabilities. Values
 * only: no handle of any program passes through here, so the same pane runs on every host.
 *
 * Rows and columns count from 0. A fault is a value, never an exception.
 */
export type CellScalar = string | number | boolean;

/** What a cell holds: "" where there is nothing. */
export type CellContent = CellScalar | { readonly error: string };

/** A block of cells on one sheet. */
export interface Block {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export type Question =
  /** The cells of a block. */
  | { readonly ask: "cells"; readonly block: Block }
  /** The cells a reference means, as written in a formula that stands in a given cell. */
  | { readonly ask: "reference"; readonly text: string; readonly from: Block }
  /** A table by name. */
  | { readonly ask: "table"; readonly name: string }
  /** Every sheet of the workbook. */
  | { readonly ask: "sheets" }
  /** The selected cell. */
  | { readonly ask: "selection" };

export interface Cells {
  readonly kind: "cells";
  readonly block: Block;
  readonly values: readonly (readonly CellContent[])[];
  /** With the equals sign; "" where the cell holds no formula. */
  readonly formulas: readonly (readonly string[])[];
}

export interface Table {
  readonly kind: "table";
  readonly name: string;
  /** Headings included. */
  readonly block: Block;
  readonly headings: readonly string[];
  /** Some of its rows are hidden by a filter. */
  readonly isFiltered: boolean;
}

export interface Sheets {
  readonly kind: "sheets";
  readonly sheets: readonly {
    readonly name: string;
    readonly isProtected: boolean;
    /** The block that holds anything; undefined for an empty sheet. */
    readonly used: Block | undefined;
  }[];
}

/** There is no such table, name or sheet. */
export interface Nothing {
  readonly kind: "nothing";
}

export type Found = Cells | Table | Sheets | Nothing;

/** One thing to do to the workbook. A list of them is one undo step. */
export type Step =
  | { readonly do: "add-sheet"; readonly name: string }
  | {
      readonly do: "set-cells";
      readonly block: Block;
      /** A text that begins with "=" is a formula only where `formulas` says so. */
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
  /** Only these words may be typed in a block. */
  | { readonly do: "offer-words"; readonly block: Block; readonly words: readonly string[] }
  | { readonly do: "select"; readonly block: Block };

export type Content =
  | { readonly kind: "keep" }
  | {
      readonly kind: "value";
      readonly value: CellScalar;
      readonly format?: string;
      readonly style?: Style;
    }
  | {
      readonly kind: "formula";
      readonly formula: string;
      readonly format?: string;
      readonly style?: Style;
    };

export type Style = "title" | "heading" | "input" | "calculated" | "words" | "caution";

export type FaultCode =
  | "read-only"
  | "sheet-protected"
  | "table-filtered"
  | "target-not-empty"
  | "name-taken"
  | "being-edited"
  | "no-answer"
  | "not-offered"
  | "failed";

/** Why a verb did nothing. Whatever the fault, the workbook is as it was before. */
export interface Fault {
  readonly kind: "fault";
  readonly code: FaultCode;
  /** What it concerns: a sheet, a table, an address. */
  readonly about: string;
}

export const isFault = (value: unknown): value is Fault =>
  typeof value === "object" && value !== null && (value as { kind?: unknown }).kind === "fault";

export interface Capabilities {
  /** What the program is called in a sentence: "the workbench". */
  readonly program: string;
  readonly canWrite: boolean;
  /** Several steps can be undone as one. */
  readonly groupsUndo: boolean;
  readonly hasFileBytes: boolean;
  readonly hasCharts: boolean;
}

export type Event =
  { readonly event: "selection" } | { readonly event: "change"; readonly sheet: string };

export interface Host {
  capabilities(): Promise<Capabilities>;
  /** Answers in the order asked. */
  read(questions: readonly Question[]): Promise<readonly Found[] | Fault>;
  /** Does every step, or none; then one undo takes all of it back. */
  write(label: string, steps: readonly Step[]): Promise<undefined | Fault>;
  /** Call back on each event until the returned function is called. */
  watch(heard: (event: Event) => void): () => void;
  /** The workbook as an .xlsx file. */
  fileBytes(): Promise<Uint8Array | Fault>;
}
