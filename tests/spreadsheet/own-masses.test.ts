/**
 * A logbook in which each titre has a sample of its own: its new columns come out in LibreOffice, as plain
 * formulas and in a partner copy of our functions, as the mean of each titre's own acid value worked out
 * by hand. Where LibreOffice is not installed this is left out; with REQUIRE_ALL=1 a missing one fails.
 */
import { beforeAll, describe, expect, it } from "vitest";
import { offers, type Spelling } from "../../src/adopt/added-columns/columns-to-add";
import { withBasis } from "../../src/adopt/recognising/basis";
import { mappingFrom } from "../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../src/adopt/recognising/recognise";
import { shareWorkbook } from "../../src/partner/sharing";
import type { BookCell } from "../../src/sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { sheetOf } from "../adopt/recognising/sheet-of";
import { hasLibreOffice, type ShownFiles, shownBy } from "./xlsx/libreoffice";

const isAsked = hasLibreOffice() || process.env.REQUIRE_ALL === "1";

const headings = [
  ...["Lot", "Titre 1 mL", "Titre 2 mL", "Titre 3 mL", "Blank mL"],
  ...["Sample 1 g", "Sample 2 g", "Sample 3 g", "KOH mol/L", "Oil L"],
  ...["Catalyst", "Assay %", "Base charge g/L pure"],
];
type Row = readonly (string | number)[];
/** Masses far apart, so that a mean of them would tell; the third titre is missing twice. */
const rows: readonly Row[] = [
  ["NQ-1", 2.1, 3.1, 4.4, 0.1, 5, 7.5, 10, 0.1, 120, "KOH", 90, 7],
  ["NQ-2", 3.3, 1.2, "", 0.15, 10.2, 4.1, "", 0.1, 90, "KOH", 90, 7],
  ["NQ-3", 5.05, 2.02, 8.4, 0.1, 12.5, 5, 20.4, 0.1, 200, "KOH", 88, 7],
  ["NQ-4", 2.5, 2.45, "", 0.2, 10, 9.8, "", 0.1, 75, "KOH", 90, 7],
];

/** mg KOH/g and g of KOH as weighed: ISO 660's 56.1 counts a mole; 0.915 kg/L where none is said. */
function byHand(row: Row): { acidValue: number; catalyst: number } {
  const at = (column: number): number => Number(row[column]);
  const each = [1, 2, 3]
    .filter((titre) => row[titre] !== "")
    .map((titre) => (at(titre) - at(4)) / at(titre + 4));
  const perGram = each.reduce((sum, one) => sum + one, 0) / each.length;
  const acidValue = 56.1 * at(8) * perGram;
  const pure = ((at(9) * 0.915 * acidValue) / 56.1) * 56.1053 + at(9) * at(12);
  return { acidValue, catalyst: pure / (at(11) / 100) };
}

function made(spelling: Spelling) {
  const cells = sheetOf([headings, ...rows]);
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no logbook");
  const mapping = withBasis(mappingFrom(guess), "baseCharge", "pure");
  const added = offers(mapping, cells, spelling).filter(({ id }) =>
    ["acidValue", "catalyst"].includes(id),
  );
  expect(added.map(({ lacks }) => lacks)).toEqual(["", ""]);
  const content = (value: string | number): BookCell | null => (value === "" ? null : { value });
  const lines = [headings, ...rows].map((row, at): (BookCell | null)[] => [
    ...row.map(content),
    ...added.map(({ formula }) => (at === 0 ? null : { formula: formula?.(at + 1) ?? "" })),
  ]);
  const file = newXlsx({
    name: "Masses",
    sheets: [{ name: "Log", rows: lines, columnWidths: [], tables: [], frozenRows: 0 }],
  });
  if (isFileProblem(file)) throw new Error(sayFile(file));
  if (spelling === "plain") return file;
  const shared = shareWorkbook(file, { kind: "partner", fileName: "masses.xlsx" });
  if (isFileProblem(shared)) throw new Error(sayFile(shared));
  return shared.bytes;
}

describe.runIf(isAsked)("a sample for each titre", () => {
  let shown: ShownFiles = new Map();
  beforeAll(() => {
    shown = shownBy(
      new Map([
        ["plain", made("plain")],
        ["functions", made("functions")],
      ]),
      0,
    );
  }, 120_000);

  it.each(["plain", "functions"])("is worked out with its own mass: %s", (spelling) => {
    const log = shown.get(spelling)?.get("Log");
    rows.forEach((row, at) => {
      const { acidValue, catalyst } = byHand(row);
      const found = (log?.[at + 1] ?? []).slice(headings.length).map(Number);
      // handbooks round molar masses to six digits
      expect(Math.abs((found[0] ?? NaN) / acidValue - 1), spelling).toBeLessThan(2e-6);
      expect(Math.abs((found[1] ?? NaN) / catalyst - 1), spelling).toBeLessThan(2e-6);
    });
  });
});
