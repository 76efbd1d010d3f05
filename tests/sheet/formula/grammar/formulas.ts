/**
 * Formulas built from the grammar of ECMA-376 part 1, 18.17.2, and of what people type beyond it: not
 * from our printer, not from our reader. Every piece says at once how a cell shows it, how a file must
 * hold it, and its tree before and after the file, in brackets around everything that has parts.
 *
 * It draws from a tape of figures; where the tape ends every choice is the first and shortest one.
 */
import fc from "fast-check";
import { expression } from "./expressions";
import { gap, type Piece } from "./piece";
import { Tape } from "./tape";

export interface Made extends Piece {
  /** With the equals sign. */
  readonly formula: string;
}

/** A whole formula, with spaces where they may stand before and after. */
export const formulas: fc.Arbitrary<Made> = fc
  .array(fc.nat({ max: 719 }), { maxLength: 160, size: "max" })
  .map((figures) => {
    const tape = new Tape(figures);
    const depth = 2 + tape.next(4);
    const piece = expression({ tape, depth, known: [], expression });
    const [left, right] = [gap(tape), gap(tape)];
    return {
      ...piece,
      shown: left + piece.shown + right,
      stored: left + piece.stored + right,
      formula: `=${left}${piece.shown}${right}`,
    };
  })
  .filter(({ stored }) => stored.length < 8000);
