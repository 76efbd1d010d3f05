/**
 * What cells may hold, and what a function must say of it: the places where programs differ. Tried by
 * tests/scenarios.xlsx and by "Check this Excel".
 */

import { neutralisedWord } from "../../core/titration/neutralised";

export interface TriedCell {
  readonly what: string;
  /** In column B; nothing for an empty cell. */
  readonly holds?: string | number | boolean;
  readonly formulaHolds?: string;
  readonly format?: string;
  /** With B for its cell: "=TITRE.ACIDVALUE(2.3,0.1,B)". */
  readonly formula: string;
  /** "missing" is #N/A, "wrong" is #VALUE!; a word of its own, so that no program takes it for an error. */
  readonly expected: "missing" | "wrong" | number;
}

const acid = "=TITRE.ACIDVALUE(2.3,0.1,B)";

export const triedCells: readonly TriedCell[] = [
  { what: "a figure", holds: 10, formula: acid, expected: 1.2903 },
  { what: "an empty cell where a figure is needed", formula: acid, expected: "missing" },
  { what: "a nought where a figure is needed", holds: 0, formula: acid, expected: "missing" },
  { what: "a text that is empty", formulaHolds: '=""', formula: acid, expected: "missing" },
  { what: "a space", holds: " ", formula: acid, expected: "missing" },
  { what: "a text", holds: "ten", formula: acid, expected: "wrong" },
  { what: "a figure typed as text", holds: "10.0 g", formula: acid, expected: "wrong" },
  { what: "TRUE", holds: true, formula: acid, expected: "wrong" },
  { what: "#N/A", formulaHolds: "=NA()", formula: acid, expected: "missing" },
  { what: "#DIV/0!", formulaHolds: "=1/0", formula: acid, expected: "wrong" },
  { what: "a negative figure", holds: -10, formula: acid, expected: "wrong" },
  {
    what: "a figure with a format of its own",
    holds: 10,
    format: '0.00" g"',
    formula: acid,
    expected: 1.2903,
  },
  {
    what: "an empty cell among titres",
    formula: "=TITRE.CORRECTED({2.4,2.6},B)",
    expected: "missing",
  },
  {
    what: `the word ${neutralisedWord}`,
    holds: neutralisedWord,
    formula: "=TITRE.CORRECTED({2.4,2.6},B)",
    expected: 2.5,
  },
  { what: "nothing given for blanks", formula: "=TITRE.CORRECTED({2.4,2.6})", expected: 2.5 },
  {
    what: "an optional argument left out",
    holds: 1.2903,
    formula: "=TITRE.FFAFROMACIDVALUE(B)",
    expected: 0.6486,
  },
  {
    what: "an optional argument left empty",
    holds: 1.2903,
    formula: "=TITRE.FFAFROMACIDVALUE(B,)",
    expected: 0.6486,
  },
  {
    what: "an assay typed as a fraction",
    holds: 0.9,
    formula: '=TITRE.NEUTRALISER(91.5,1.2903,"KOH",B)',
    expected: "wrong",
  },
  {
    what: "a percentage formatted as one",
    holds: 0.9,
    format: "0%",
    formula: '=TITRE.NEUTRALISER(91.5,1.2903,"KOH",B)',
    expected: "wrong",
  },
];

/** The formula with the cell it is about in the place of B. */
export const triedFormula = ({ formula }: TriedCell, cell: string): string =>
  formula.replace(/\bB\b/, cell);
