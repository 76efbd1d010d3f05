import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isFileProblem, openXlsx } from "../../../src/xlsx";
import { bases, withBasis } from "../../../src/adopt/recognising/basis";
import { mappingFrom, withColumn } from "../../../src/adopt/recognising/mapping";
import { lacks } from "../../../src/adopt/recognising/lacks";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { cellsFromFile } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { summaryWords } from "../../../src/taskpane/logbook/listed";
import { oldLogbookKey, strengthColumn } from "./old-logbook-key";

const book = openXlsx(new Uint8Array(readFileSync("sample-workbooks/old-logbook.xlsx")));
if (isFileProblem(book)) throw new Error("the sample does not open");
const [log, stores] = book.sheets.map((sheet) => {
  const cells = cellsFromFile(book, sheet);
  return { cells, guesses: recogniseSheet(cells) };
});

describe("the old logbook of the samples", () => {
  it("holds what a home-made workbook holds", () => {
    expect(new Set(book.kept.map(({ what }) => what))).toEqual(
      new Set(["conditional formats", "validations", "notes", "charts", "images"]),
    );
    expect(book.sheets[0]).toMatchObject({ frozenRows: 7, frozenColumns: 3 });
    expect(book.sheets[0]?.merged).toEqual([{ row: 0, column: 0, rows: 1, columns: 19 }]);
    expect(book.sheets[0]?.widths[17]?.isHidden).toBe(true);
  });

  it("is recognised whole, and the store of lye is told apart", () => {
    expect(stores?.guesses.some(({ isLogbook }) => isLogbook)).toBe(false);
    const guess = log?.guesses[0];
    expect(guess?.place).toMatchObject({ headingRow: 6, firstRow: 7, lastRow: 208 });
    expect(guess?.columns.map(({ role }) => role)).toEqual([
      "number",
      "date",
      "lot",
      "titre",
      "titre",
      "titre",
      "blank",
      "meanTitre",
      "correctedTitre",
      "sampleMass",
      "strength",
      "ffa",
      "oilAmount",
      "amountUnit",
      "oilMass",
      "acidDose",
      "catalyst",
      "methanol",
      "weighed",
      "note",
    ]);
    expect(guess && lacks(mappingFrom(guess)).map(({ sentence }) => sentence)).toEqual([
      "Is the titrant's strength of pure lye, or as weighed?",
      "Is the base charge of pure lye, or as weighed?",
    ]);
  });

  it("gives up every planted mistake under its right name, and nothing else", () => {
    const guess = log?.guesses[0];
    if (!log || !guess) throw new Error("no table was found");
    const strong = withColumn(mappingFrom(guess), strengthColumn, "strength", "g/L");
    // What it lacks, answered as its plan has it: the grams are pure.
    const mapping = withBasis(withBasis(strong, "strength", "pure"), "baseCharge", "pure");
    const report = recheckAtOnce([{ mapping, cells: log.cells }]);
    expect(report.rows).toBe(200);
    expect(report.findings.map(({ address, mistake }) => `${address} ${mistake}`).sort()).toEqual(
      oldLogbookKey,
    );
    // Every one that touches the dose says by how much.
    expect(report.findings.filter(({ effect }) => effect === undefined)).toEqual([]);
  });

  it("counts no column as checked that it says was not, and asks again what makes almost none fit", () => {
    const guess = log?.guesses[0];
    if (!log || !guess) throw new Error("no table was found");
    // one lye in burette and vessel, its grams taken in either way
    const answers = bases.map((basis) => [basis, basis] as const);
    const doubted = answers.filter(([strength, charge]) => {
      const strong = withColumn(mappingFrom(guess), strengthColumn, "strength", "g/L");
      const mapping = withBasis(withBasis(strong, "strength", strength), "baseCharge", charge);
      const report = recheckAtOnce([{ mapping, cells: log.cells }]);
      const doubts = report.unchecked.flatMap(({ doubt }) => doubt ?? []);
      const words = summaryWords(report);
      // the column of totals is the one column of doses
      expect(/\d doses\b/.test(words)).toBe(doubts.length === 0);
      expect(report.checked.dose > 0).toBe(doubts.length === 0);
      if (doubts.length === 0) return false;
      expect(words).toMatch(/nothing wrong was found in what was checked\.$/);
      expect(doubts).toEqual([
        "The total doses, “KOH total (g)”, were not checked: almost none fit. Is the base charge pure lye, or as weighed?",
      ]);
      return true;
    });
    expect(doubted).toEqual([["as weighed", "as weighed"]]);
  });
});
