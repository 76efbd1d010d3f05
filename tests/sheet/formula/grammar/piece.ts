/** A piece of a formula: how it is shown and stored, and its tree before and after. */
import type { Tape } from "./tape";

/** How tightly a piece holds together, by the standard's table of operators, weakest first. */
export const binds = {
  comparison: 1,
  joining: 2,
  adding: 3,
  multiplying: 4,
  power: 5,
  percent: 6,
  sign: 7,
  union: 8,
  intersection: 9,
  range: 10,
  spill: 11,
  whole: 12,
} as const;

export interface Piece {
  /** As a cell shows it. */
  readonly shown: string;
  /** As a file holds it, in a cell of the table Log. */
  readonly stored: string;
  readonly tree: string;
  /** The tree once a file was written and read: names in the file's spelling. */
  readonly back: string;
  readonly strength: number;
  /** It stands for cells. */
  readonly refers: boolean;
}

export const leaf = (shown: string, more: Partial<Piece> = {}): Piece => ({
  shown,
  stored: shown,
  tree: shown,
  back: more.tree ?? shown,
  strength: binds.whole,
  refers: false,
  ...more,
});

const spaces = ["", "", "", "", "", " ", "  ", "\n", " \n "];
export const gap = (tape: Tape): string => tape.pick(spaces);

/** Some brackets more than are needed. */
export function loosely(tape: Tape, piece: Piece): Piece {
  return tape.oneIn(4) ? loosely(tape, bracketed(tape, piece)) : piece;
}

export function bracketed(tape: Tape, piece: Piece): Piece {
  const [left, right] = [gap(tape), gap(tape)];
  const around = (text: string) => `(${left}${text}${right})`;
  return {
    ...piece,
    shown: around(piece.shown),
    stored: around(piece.stored),
    strength: binds.whole,
  };
}

export const atLeast = (tape: Tape, piece: Piece, strength: number): Piece =>
  piece.strength < strength ? loosely(tape, bracketed(tape, piece)) : piece;

export const unjoined = (tape: Tape, piece: Piece): Piece =>
  piece.strength === binds.union ? bracketed(tape, piece) : piece;
