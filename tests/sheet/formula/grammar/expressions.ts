/** Operators and what they stand beside. */
import { call, local } from "./calls";
import { cellsLike, single } from "./cells";
import { array, constant } from "./constants";
import { atLeast, binds, gap, loosely, type Piece } from "./piece";
import { onSheet, reference } from "./references";
import { deeper, type Where } from "./where";

const infix: readonly (readonly [sign: string, strength: number])[] = [
  ["+", binds.adding],
  ["-", binds.adding],
  ["*", binds.multiplying],
  ["/", binds.multiplying],
  ["^", binds.power],
  ["&", binds.joining],
  ["=", binds.comparison],
  ["<>", binds.comparison],
  [">=", binds.comparison],
  ["<", binds.comparison],
];

function binary(where: Where): Piece {
  const { tape } = where;
  const [sign, strength] = tape.pick(infix);
  const left = atLeast(tape, expression(deeper(where)), strength);
  const right = atLeast(tape, expression(deeper(where)), strength + 1);
  const between = gap(tape) + sign + gap(tape);
  return {
    shown: left.shown + between + right.shown,
    stored: left.stored + between + right.stored,
    tree: `(${left.tree} ${sign} ${right.tree})`,
    back: `(${left.back} ${sign} ${right.back})`,
    strength,
    refers: false,
  };
}

function signed(where: Where): Piece {
  const { tape } = where;
  const sign = tape.pick(["-", "+"]) + tape.pick(["", "", " "]);
  const of = atLeast(tape, expression(deeper(where)), binds.sign);
  return {
    shown: sign + of.shown,
    stored: sign + of.stored,
    tree: `(${sign.trim()}${of.tree})`,
    back: `(${sign.trim()}${of.back})`,
    strength: binds.sign,
    refers: false,
  };
}

function percent(where: Where): Piece {
  const { tape } = where;
  const of = atLeast(tape, expression(deeper(where)), binds.percent);
  const sign = `${tape.pick(["", "", " "])}%`;
  return {
    shown: of.shown + sign,
    stored: of.stored + sign,
    tree: `(${of.tree}%)`,
    back: `(${of.back}%)`,
    strength: binds.percent,
    refers: false,
  };
}

export function expression(where: Where): Piece {
  const { tape, depth } = where;
  const kinds = depth <= 0 ? 3 : 12;
  const piece = (() => {
    switch (tape.next(kinds)) {
      case 0:
        return reference(tape);
      case 1:
        return constant(tape);
      case 2:
        return where.known.length > 0 ? local(tape.pick(where.known)) : onSheet(tape, "A1");
      case 3:
      case 4:
      case 5:
        return call(deeper(where));
      case 6:
      case 7:
        return binary(where);
      case 8:
        return signed(where);
      case 9:
        return percent(where);
      case 10:
        return tape.oneIn(3) ? array(tape) : cellsLike(where);
      default:
        return single(tape, expression(deeper(where)));
    }
  })();
  return loosely(tape, piece);
}
