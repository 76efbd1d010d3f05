/**
 * A formula with its cells taken out: what is left is the same for all the cells it was filled into,
 * so that it is read once and written out for each of them. Texts, quoted sheet names and what stands
 * in square brackets are not looked into.
 */
const found =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?:'.|[^[\]']|\[(?:'.|[^\]'])*\])*\]|(?<![\p{L}\p{N}_.\\?$])(\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})(?![\p{L}\p{N}_.\\?(![])/gu;

/** The cells that stand for those taken out; the last column is hardly ever used. */
const first = 100_001;
const standIn = (index: number): string => `$XFD$${String(first + index)}`;

/** Finds stand-ins: the figure is to be given to pieceIndex. */
export const standInPattern = "\\$XFD\\$(1\\d{5,6})";
export const pieceIndex = (digits: string): number => Number(digits) - first;

export interface Cut {
  /** The formula with a stand-in for each cell. */
  readonly canonical: string;
  /** The cells as they were written, in their order. */
  readonly pieces: readonly string[];
}

/** @example cut("SUM(A2:$C2)") // { canonical: "SUM($XFD$100001:$XFD$100002)", pieces: ["A2", "$C2"] } */
export function cut(formula: string): Cut {
  const pieces: string[] = [];
  const canonical = formula.replace(found, (whole: string, cell: string | undefined) => {
    if (cell === undefined) return whole;
    pieces.push(cell);
    return standIn(pieces.length - 1);
  });
  return { canonical, pieces };
}

const indexes = new RegExp(standInPattern, "g");

/** Which pieces a part of a canonical formula stands for. */
export const piecesIn = (canonical: string): number[] =>
  [...canonical.matchAll(indexes)].map(([, digits = ""]) => pieceIndex(digits));

/** A canonical text ready to be written with the pieces of any cell. */
export function restorer(canonical: string): (pieces: readonly string[]) => string {
  const [before = "", ...rest] = canonical.split(indexes);
  // In between stand the figures of the pieces.
  const places = rest.filter((_, at) => at % 2 === 0).map(pieceIndex);
  const after = rest.filter((_, at) => at % 2 === 1);
  return (pieces) => {
    let text = before;
    for (const [at, place] of places.entries()) text += (pieces[place] ?? "") + (after[at] ?? "");
    return text;
  };
}

/** The text as it was written. */
export const restored = (canonical: string, pieces: readonly string[]): string =>
  restorer(canonical)(pieces);

/** Counted from 1. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** The same as cornerOf without the dollar signs, for texts that are looked at often. */
export function spotOf(piece: string): Spot {
  let row = 0;
  let column = 0;
  for (let at = 0; at < piece.length; at++) {
    const code = piece.charCodeAt(at);
    if (code >= 48 && code <= 57) row = row * 10 + code - 48;
    else if (code !== 36) column = column * 26 + (code & ~0x20) - 64;
  }
  return { row, column };
}

export interface Corner {
  readonly columnDollar: string;
  readonly column: number;
  readonly rowDollar: string;
  readonly row: number;
}

const dollar = 36;

/** A cell as it was written, taken apart; rows and columns from 0. Asked for very often. */
export function cornerOf(piece: string): Corner {
  let at = 0;
  let column = 0;
  const isColumnFixed = piece.charCodeAt(0) === dollar;
  if (isColumnFixed) at += 1;
  for (; piece.charCodeAt(at) > 64; at++)
    column = column * 26 + (piece.charCodeAt(at) & ~0x20) - 64;
  const isRowFixed = piece.charCodeAt(at) === dollar;
  if (isRowFixed) at += 1;
  return {
    columnDollar: isColumnFixed ? "$" : "",
    column: column - 1,
    rowDollar: isRowFixed ? "$" : "",
    row: Number(piece.slice(at)) - 1,
  };
}
