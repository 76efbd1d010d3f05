/** A re-check at a glance, over findings written by hand. */
import { describe, expect, it } from "vitest";
import { allGrams, kindLines, monthLines } from "../../../src/taskpane/logbook/overview";
import { mappingFrom } from "../../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import type { Finding } from "../../../src/adopt/recheck/reporting/finding";
import { Page } from "../../adopt/strangers/page";

const page = new Page();
["Date", "Lot", "Titre mL", "Blank mL", "Sample g", "KOH mol/L", "Acid value"].forEach(
  (each, at) => {
    page.put(0, at, each);
  },
);
["2026-03-01", "2026-03-09", "2026-04-02"].forEach((day, at) => {
  [day, `L${String(at)}`, 2.5, 0.1, 10, 0.1, 1.35].forEach((value, column) => {
    page.put(1 + at, column, value);
  });
});
const cells = page.cells("Log");
const [guess] = recogniseSheet(cells);
if (!guess) throw new Error("no table");
const books = [{ mapping: mappingFrom(guess), cells }];
const none = recheckAtOnce(books);

const found = (row: number, mistake: Finding["mistake"], grams?: number): Finding => ({
  sheet: "Log",
  row,
  column: 6,
  address: `G${String(row + 1)}`,
  heading: "Acid value",
  role: "acidValue",
  label: "",
  mistake,
  dose: "differs",
  held: "1",
  should: "2",
  unit: "mg KOH/g",
  formula: "",
  effect:
    grams === undefined ? undefined : { grams, of: "batch", acidLeftMoles: 0, acidLeftPercent: 0 },
});

describe("what a re-check found, at a glance", () => {
  const report = {
    ...none,
    findings: [
      found(1, "blank-not-subtracted", 30),
      { ...found(1, "blank-not-subtracted", 30), column: 5 },
      found(2, "assay-not-applied", -100),
      found(3, "blank-not-subtracted", 20),
      found(3, "decimal-slip"),
    ],
  };

  it("counts a row's grams once, however many of its figures are wrong", () => {
    const lines = kindLines(report).map(({ words, findings, under, over }) => ({
      words,
      figures: findings.length,
      under,
      over,
    }));
    // the worst first
    expect(lines).toEqual([
      { words: "Assay of the lye not applied", figures: 1, under: 100, over: 0 },
      { words: "Blank not subtracted", figures: 3, under: 0, over: 50 },
      { words: "Decimal point wrong", figures: 1, under: 0, over: 0 },
    ]);
    expect(allGrams(report)).toEqual({ under: 100, over: 50 });
  });

  it("says month by month what was off, the first one first", () => {
    expect(monthLines(report, books)).toEqual([
      { month: "Mar 2026", rows: 2, under: 100, over: 30 },
      { month: "Apr 2026", rows: 1, under: 0, over: 20 },
    ]);
  });
});
