/** Where in a formula a piece is made. */
import type { Tape } from "./tape";

/** The names LET and LAMBDA have made around a place. */
export type Known = readonly string[];

export interface Where {
  readonly tape: Tape;
  readonly depth: number;
  readonly known: Known;
}
export const deeper = (where: Where, known: Known = where.known): Where => ({
  ...where,
  depth: where.depth - 1,
  known,
});
