/** Calls: plain, marked, ours, of links; LET and LAMBDA with the names they make. */
import { bracketed, binds, gap, leaf, type Piece, unjoined } from "./piece";
import { deeper, type Where } from "./where";

/** As shown, as stored, and as shown once it was stored. */
const functions: readonly (readonly [shown: string, stored?: string, back?: string])[] = [
  ["SUM"],
  ["IF"],
  ["log10"],
  ["CX.GET"],
  ["my_fn"],
  ["_xldudf_CX_GET"],
  ["STDEV.S", "_xlfn.STDEV.S"],
  ["T.INV.2T", "_xlfn.T.INV.2T"],
  ["xlookup", "_xlfn.XLOOKUP", "XLOOKUP"],
  ["FILTER", "_xlfn._xlws.FILTER"],
  ["SORT", "_xlfn._xlws.SORT"],
  ["TITRE.DOSE", "_xldudf_TITRE_DOSE"],
  ["titre.AcidValue", "_xldudf_TITRE_ACIDVALUE", "TITRE.ACIDVALUE"],
  ["TITRE.CATALYST", "_xldudf_TITRE_CATALYST"],
  ["[2]!STDEV.S", "[2]!STDEV.S", "[2]!STDEV.S"],
  ["'my file.xlam'!F"],
  ["[2]!_xldudf_TITRE_DOSE", "_xldudf_TITRE_DOSE", "TITRE.DOSE"],
];

function argument(where: Where): Piece {
  const { tape } = where;
  if (tape.oneIn(9)) return leaf("", { tree: "-" });
  const given = where.expression(where);
  // A union's comma would part arguments.
  const piece = given.strength === binds.union ? bracketed(tape, given) : given;
  const [left, right] = [gap(tape), gap(tape)];
  return { ...piece, shown: left + piece.shown + right, stored: left + piece.stored + right };
}

function argumentList(where: Where): readonly Piece[] {
  const given = Array.from({ length: where.tape.next(4) }, () => argument(where));
  return given.length === 1 && given[0]?.tree === "-" ? [] : given;
}

const joinedBy = (
  pieces: readonly Piece[],
  by: string,
  key: "shown" | "stored" | "tree" | "back",
) => pieces.map((piece) => piece[key]).join(by);

function called(name: readonly [string, string, string], given: readonly Piece[]): Piece {
  const [shown, stored, back] = name;
  return {
    shown: `${shown}(${joinedBy(given, ",", "shown")})`,
    stored: `${stored}(${joinedBy(given, ",", "stored")})`,
    tree: `${shown}[${joinedBy(given, "; ", "tree")}]`,
    back: `${back}[${joinedBy(given, "; ", "back")}]`,
    strength: binds.whole,
    refers: true,
  };
}

export const local = (name: string): Piece =>
  leaf(name, { stored: `_xlpm.${name}`, tree: `<${name}>`, refers: true });

function letCall(where: Where): Piece {
  const { tape } = where;
  const made: string[] = [];
  const given: Piece[] = [];
  const inside = () => deeper(where, [...where.known, ...made]);
  for (const name of ["p", "q_", "Öl"].slice(0, 1 + tape.next(3))) {
    given.push(local(name), where.expression(inside()));
    made.push(name);
  }
  given.push(where.expression(inside()));
  return called(
    ["LET", "_xlfn.LET", "LET"],
    given.map((each) => unjoined(tape, each)),
  );
}

function lambda(where: Where): Piece {
  const made = ["u", "v_1"].slice(0, 1 + where.tape.next(2));
  const body = unjoined(where.tape, where.expression(deeper(where, [...where.known, ...made])));
  return called(["LAMBDA", "_xlfn.LAMBDA", "LAMBDA"], [...made.map(local), body]);
}

export function call(where: Where): Piece {
  const { tape, known } = where;
  if (tape.oneIn(10)) return letCall(where);
  if (tape.oneIn(12)) return lambda(where);
  if (tape.oneIn(12)) {
    const applies = lambda(where);
    const given = argumentList(deeper(where));
    return {
      shown: `${applies.shown}(${joinedBy(given, ",", "shown")})`,
      stored: `${applies.stored}(${joinedBy(given, ",", "stored")})`,
      tree: `${applies.tree}[${joinedBy(given, "; ", "tree")}]`,
      back: `${applies.back}[${joinedBy(given, "; ", "back")}]`,
      strength: binds.whole,
      refers: true,
    };
  }
  const name = known.length > 0 && tape.oneIn(4) ? tape.pick(known) : undefined;
  if (name !== undefined) return called([name, `_xlpm.${name}`, name], argumentList(deeper(where)));
  const [shown, stored = shown, back = shown] = tape.pick(functions);
  return called([shown, stored, back], argumentList(deeper(where)));
}
