/** What stands for cells: references and calls joined by colons, spaces and commas, with @ and #. */
import { call, local } from "./calls";
import { atLeast, binds, bracketed, gap, loosely, type Piece } from "./piece";
import { reference } from "./references";
import type { Tape } from "./tape";
import { deeper, type Where } from "./where";

/** Stands for cells; needs no brackets beside a colon, a space or a #. */
export function cellsLike(where: Where): Piece {
  const { tape, depth, known } = where;
  const kinds = depth <= 0 ? 2 : 9;
  switch (tape.next(kinds)) {
    case 0:
      return reference(tape);
    case 1:
      return known.length > 0 ? local(tape.pick(known)) : reference(tape);
    case 2:
      return call(deeper(where));
    case 3: {
      // Beside # a block would be one with it, as it is beside a colon: brackets tell.
      const of = alone(tape, cellsLike(deeper(where)));
      const space = tape.pick(["", "", " "]);
      return {
        shown: `${of.shown}${space}#`,
        stored: `_xlfn.ANCHORARRAY(${of.stored})`,
        tree: `(${of.tree}#)`,
        back: `(${of.back}#)`,
        strength: binds.spill,
        refers: true,
      };
    }
    case 4:
      return joined(where, " ", binds.intersection);
    case 5:
      return bracketed(tape, joined(where, ",", binds.union));
    case 6:
      return joined(where, ":", binds.range);
    case 7:
      return bracketed(tape, cellsLike(deeper(where)));
    default:
      return bracketed(tape, single(tape, cellsLike(deeper(where))));
  }
}

/** A block, a name or a cell keeps to itself beside a colon or a # only where that is plain. */
function alone(tape: Tape, piece: Piece): Piece {
  const isPlain = /^\$?[A-Z]{1,3}\$?\d+$/i.test(piece.shown) || piece.shown.endsWith(")");
  const isCall = piece.strength === binds.whole && isPlain;
  return isCall ? piece : bracketed(tape, piece);
}

export function single(tape: Tape, given: Piece): Piece {
  const of = atLeast(tape, loosely(tape, given), binds.sign);
  const space = tape.pick(["", "", " "]);
  return {
    shown: `@${space}${of.shown}`,
    stored: `_xlfn.SINGLE(${of.stored})`,
    tree: `(@${of.tree})`,
    back: `(@${of.back})`,
    strength: binds.sign,
    refers: of.refers,
  };
}

function joined(where: Where, sign: "," | " " | ":", strength: number): Piece {
  const { tape } = where;
  const side = (least: number) => {
    const piece = atLeast(tape, cellsLike(deeper(where)), least);
    return sign === ":" ? alone(tape, piece) : piece;
  };
  const left = side(strength);
  const right = side(strength + 1);
  // A space or a line break is the sign itself; beside the others it may stand.
  const between = sign === " " ? tape.pick([" ", "  ", "\n"]) : gap(tape) + sign + gap(tape);
  // Files have a space for what two references share.
  const kept = sign === " " && !/^ +$/.test(between) ? " " : between;
  const isBlock =
    sign === ":" && isCell(left.tree) && isCell(right.tree) && !right.tree.includes("!");
  const both = (key: "tree" | "back") =>
    isBlock
      ? `<${left[key].slice(1, -1)}:${right[key].slice(1, -1)}>`
      : `(${left[key]} ${sign === " " ? "_" : sign} ${right[key]})`;
  // Two cells are one block, written anew where its sheet lacks quotation marks.
  const isAnew = isBlock && left.tree !== left.back;
  return {
    shown: left.shown + between + right.shown,
    stored: isAnew ? both("back").slice(1, -1) : left.stored + kept + right.stored,
    tree: both("tree"),
    back: both("back"),
    strength,
    refers: true,
  };
}

const isCell = (tree: string): boolean =>
  /^<(?:.*!)?\$?[A-Za-z]{1,3}\$?\d+>$/s.test(tree) && !/LOG10x/.test(tree);
