/** Where in a formula a piece is made. */
import type { Piece } from "./piece";
import type { Tape } from "./tape";

/** The names LET and LAMBDA have made around a place. */
export type Known = readonly string[];

export interface Where {
  readonly tape: Tape;
  readonly depth: number;
  readonly known: Known;
  /** Makes whatever may stand there: a call has expressions in it, and an expression calls. */
  readonly expression: (where: Where) => Piece;
}
export const deeper = (where: Where, known: Known = where.known): Where => ({
  ...where,
  depth: where.depth - 1,
  known,
});
