/** A sheet that looks closely at one lot's replicates, and one that checks the arithmetic itself. */
import type { BookCell, BookSheet } from "../../sheet/book";
import { copies, heading, spilled, typed, worked, words } from "./cells";

/** Lot SW-18: a fourth titre that went past pink. */
const titres = [5.2, 5.25, 5.2, 6.1];

const bench = "B4:E4,B6,B7,B8,B9,B10,B11";

/** What the two tables take up. */
const rowsOfSpread = 15;
const rowsBelowVerdict = 3;
const rowsOfBudget = 12;

const figures: readonly (readonly (BookCell | null)[])[] = [
  [{ value: "Replicates of lot SW-18", style: "title" }],
  [words("Change a titre, or empty its cell: the flags, the spread and the budget follow.")],
  [],
  [heading("Titres, mL"), ...titres.map((titre) => typed(titre, "0.00", "Volume used, mL."))],
  [heading("Flags"), worked("=TITRE.OUTLIERS(B4:E4,B9)"), ...spilled("", "", "")],
  [heading("Blank, mL"), typed(0.15, "0.00", "Solvent alone, mL.")],
  [heading("Titrant, mol/L"), typed(0.0998, "0.0000", "Strength of the titrant.")],
  [heading("Sample, g"), typed(10, "0.00", "Grams of oil in each titration.")],
  [heading("Read to, mL"), typed(0.05, "0.00", "Smallest difference read, mL.")],
  [heading("Weighed to, g"), typed(0.01, "0.00", "Smallest difference weighed, g.")],
  [heading("Titrant, ± %"), typed(0.5, "0.0", "How far off its strength may be.")],
  [],
  [heading("Spread")],
  [worked("=TITRE.SPREAD(B4:E4,B9)"), ...spilled("0")],
  ...copies(rowsOfSpread - rowsBelowVerdict - 2, spilled("", "0.000")),
  spilled("", ""),
  ...copies(rowsBelowVerdict, spilled("", "0.000")),
  [],
  [heading("What the uncertainty is made of")],
  [worked(`=TITRE.BUDGET(${bench})`), ...copies(5, { style: "calculated" } as const)],
  ...copies(rowsOfBudget - 2, spilled("", "0.000", "", "0.0000", "0.0000", "0.0")),
  spilled("", "", "", "", "0.0000"),
];

export const replicatesSheet: BookSheet = {
  name: "Replicates",
  rows: figures,
  columnWidths: [52, 20, 26, 20, 14, 20],
  tables: [],
  frozenRows: 0,
  print: { landscape: true, fitToWidth: true, repeatRows: { row: 0, rows: 1 } },
};

/** Room for every check, with a few to spare. */
const rowsOfChecks = 40;

export const checksSheet: BookSheet = {
  name: "Checks",
  rows: [
    [{ value: "Checks against published figures", style: "title" }],
    [words("Worked out here and now. The last column says whether the figures agree.")],
    [],
    [worked("=TITRE.CHECKS()"), ...copies(4, { style: "calculated" } as const)],
    ...copies(rowsOfChecks, copies(5, { style: "calculated" } as const)),
  ],
  columnWidths: [62, 96, 16, 22, 12],
  tables: [],
  // With the heads that spill.
  frozenRows: 4,
  print: { landscape: true, fitToWidth: true, repeatRows: { row: 3, rows: 1 } },
};
