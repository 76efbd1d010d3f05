/** The cells that awkward arguments refer to: what a logbook holds, and what no one would think of. */
import type { RawCell } from "../twins/raw-book";

const formula = (text: string): RawCell => ({ formula: text });

/** Single cells, in column A of the sheet In; the first stays empty. */
const singles: readonly RawCell[] = [
  null,
  formula('""'),
  "Oil",
  "2.5",
  " 7 ",
  "2,4",
  "TRUE",
  "<3",
  "#N/A",
  "2024-02-29",
  "a*",
  "OIL lot",
  true,
  false,
  formula("NA()"),
  formula("1/0"),
  0,
  1,
  2,
  -1,
  0.5,
  1.5,
  2.5,
  -2.5,
  1.005,
  2.675,
  -0.3,
  1e-9,
  123456789.125,
  1e15,
  45351,
  45322.75,
  60,
];

/** Ranges, from column C on, each of `deep` cells. */
const lists: readonly (readonly RawCell[])[] = [
  [1, 2.5, -3, 2.5, 0, 12.25, 7, 0.1],
  [1, null, "Oil", 2.5, true, "2.5", formula('""'), 4],
  ["Oil", "oil", "OIL lot", "a*", "ab", "x y", "?", "2.5"],
  [null, null, null, null, null, null, null, null],
  [1, 2, formula("NA()"), 3, 4, 5, 6, 7],
  [1, 2, 3, 3, 5, 8, 13, 21],
  [true, false, true, true, true, false, true, true],
  [formula('""'), "x", formula('""'), "y", null, "z", " ", "2"],
  [45292, 45322.5, 45351, 45382, null, 45657, 45658, 46000],
  [0.1, 0.2, 0.3, 0.1, 0.2, 0.3, 0.1, 0.2],
  [1e9, 1000000000.1, 1000000000.2, 1e9, 1000000000.1, 1e9, 1e9, 1e9],
  [3, "3", true, 0, null, false, formula('""'), -1],
  ["apple", "Apricot", "banana", "cherry", "fig", "grape", "kiwi", "lemon"],
];

const deep = 8;
const firstList = 2;

export const rowsIn: readonly (readonly RawCell[])[] = Array.from(
  { length: Math.max(singles.length, deep) },
  (_, row) => [singles[row] ?? null, null, ...lists.map((list) => list[row] ?? null)],
);

const letter = (column: number): string => String.fromCharCode(65 + column);

export const singleCells: readonly string[] = singles.map((_, row) => `In!$A$${row + 1}`);
/** One range by the place of its list. */
export const rangeOf = (list: number): string =>
  `In!$${letter(firstList + list)}$1:$${letter(firstList + list)}$${deep}`;
export const ranges: readonly string[] = lists.map((_, list) => rangeOf(list));
/** A block of two lists that stand beside each other. */
export const blockOf = (list: number, columns: number): string =>
  `In!$${letter(firstList + list)}$1:$${letter(firstList + list + columns - 1)}$${deep}`;
