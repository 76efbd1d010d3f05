/**
 * The plain-formula twin of a worksheet function: the same arithmetic in functions that every
 * spreadsheet program has, for a partner without the add-in. A twin is written once, in the folder
 * `twins`, apart from the entries so that functions.js stays small; the partner copy, `npm run try`
 * and the help pages write it out for the call in hand.
 *
 * A twin treats cells not filled in as the function does, and is an error where the function is an
 * error; which error may differ.
 */

/** One argument of the call, as formula text that can stand anywhere inside a larger formula. */
export interface TwinArgument {
  /** A reference, a constant, an array constant, or a helper cell that holds the expression. */
  readonly text: string;
  readonly rows: number;
  readonly columns: number;
  /** The text of one cell of it, counted from 0. */
  cell(row: number, column: number): string;
}

/** The call that is written out. The same helper asked for twice is one helper. */
export interface TwinCall {
  /** Undefined when the argument was left out. */
  argument(name: string): TwinArgument | undefined;
  /**
   * Puts a formula (without its equals sign) into a helper cell that a partner can read, and gives
   * the reference to it. The label says what the figure is, with its unit.
   */
  helper(label: string, formula: string): string;
  /** Helper cells one below another: one figure for each replicate. The text is the whole column. */
  helperColumn(label: string, formulas: readonly string[]): TwinArgument;
}

export type TwinAnswer =
  /** One cell; without the equals sign. */
  | { readonly kind: "formula"; readonly formula: string }
  /**
   * A spilled table: one formula for each cell, rows outside. A cell without a formula keeps its
   * value: words that do not depend on the arguments, or that no plain formula can say. It may be
   * larger than what spilled, where cells of a range are not filled in: what lies beyond is left out.
   */
  | {
      readonly kind: "table";
      readonly formulas: readonly (readonly (string | undefined)[])[];
    }
  /** What no plain formula says: the copy keeps what stands there. */
  | { readonly kind: "value" }
  /** This call has no twin; the reason completes "Left as it is: ...". */
  | { readonly kind: "none"; readonly reason: string };

export type Twin = (call: TwinCall) => TwinAnswer;
