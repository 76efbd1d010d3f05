/** What the parts of the reader hand each other: where they are, how deep, and what a comma means. */
import type { Outcome } from "../../core/problem/problem";
import type { Cursor } from "./cursor";
import type { Expression } from "./tree";

export interface Reading {
  readonly cursor: Cursor;
  /** How many brackets and signs are open around this place. */
  readonly depth: number;
  /** Here a comma joins references; between arguments it parts them. */
  readonly commaJoins: boolean;
  /** Reads an expression of operators at least so strong. */
  readonly expression: (reading: Reading, weakest: number) => Outcome<Expression>;
}

/** One bracket further in. */
export const inside = (reading: Reading, commaJoins: boolean): Reading => ({
  ...reading,
  depth: reading.depth + 1,
  commaJoins,
});
