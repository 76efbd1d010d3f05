/**
 * Two mistakes or more in one row: what its lye is off is the held dose less the right one, by a second
 * implementation (rows.ts), told of all of them together; what each makes of it adds up to that.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Finding } from "../../../src/adopt/recheck/reporting/finding";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { effectWords } from "../../../src/taskpane/logbook/effect-words";
import { kindLines, monthLines, severalLine } from "../../../src/taskpane/logbook/overview";
import { times } from "../../thorough";
import { logbookOf, rowOf, usual, workRow, type Wrong } from "./rows";

const titration = ["mean", "net", "acidValue", "ffa", "acidDose"] as const;
const right = workRow(usual).total;

/** A row whose titration is wrong in one way, and its total in that way and in another besides. */
const rowWith = (ofAcid: Wrong, ofTotal: Wrong, amount = usual.amount) =>
  rowOf(
    { ...usual, amount },
    {
      ...Object.fromEntries(titration.map((step) => [step, ofAcid])),
      total: { ...ofAcid, ...ofTotal },
    },
  );

const told = ({ effect }: Finding): number | undefined => effect?.together?.ofIt;
const parts = (findings: readonly Finding[]): number[] =>
  [
    ...new Map(findings.map((each) => [`${each.mistake} ${String(each.also)}`, told(each) ?? NaN])),
  ].map(([, grams]) => grams);
const sum = (all: readonly number[]): number => all.reduce((so, each) => so + each, 0);

describe("two mistakes in one row", () => {
  it("tell what the row is off, and what each makes of it: a blank and an assay forgotten", () => {
    const { findings } = recheckAtOnce([
      logbookOf([rowOf(usual), rowWith({ blank: 0 }, { assay: 1 }), rowOf(usual), rowOf(usual)]),
    ]);
    // by hand: 13.7 g for the blank's 0.25 mL, in 90 % of lye 16.45 g; then a tenth of all is left out
    const blank = workRow(usual, { blank: 0 }).total - right;
    const whole = workRow(usual, { blank: 0, assay: 1 }).total - right;
    expect(new Set(findings.map(({ mistake }) => mistake))).toEqual(
      new Set(["blank-not-subtracted", "assay-not-applied"]),
    );
    for (const each of findings) {
      expect(Math.abs((each.effect?.grams ?? 0) - whole)).toBeLessThan(1);
      const own = each.mistake === "blank-not-subtracted" ? blank : whole - blank;
      expect(Math.abs((told(each) ?? 0) - own)).toBeLessThan(1);
    }
    const [first] = findings;
    expect(first && effectWords(first)).toMatch(
      /^All mistakes of this row together: \d+ g too little lye: .* Of it by this one: 1\d\.\d g too much lye\.$/,
    );
  });

  it("tell nothing where the dose is right all the same", () => {
    const row = rowOf(usual, { acidValue: { blank: 0 }, ffa: { acid: 256 } });
    const { findings } = recheckAtOnce([logbookOf([rowOf(usual), row, rowOf(usual)])]);
    expect(findings.length).toBe(2);
    expect(findings.map(effectWords)).toEqual(findings.map(() => "The dose is not affected."));
  });

  it("whatever they are: each line says the whole, and the parts that are told add up to it", () => {
    const ofAcid = fc.constantFrom<Wrong>({ blank: 0 }, { blank: -1 }, { zeros: true });
    const ofTotal = fc.constantFrom<Wrong>(
      { assay: 1 },
      { assay: 1 / 0.9 },
      { byCharge: true },
      { factor: 1.37 },
      { factor: 10 },
    );
    const amounts = fc.integer({ min: 60, max: 300 });
    fc.assert(
      fc.property(ofAcid, ofTotal, amounts, (one, other, amount) => {
        const given = { ...usual, titres: [5.2, undefined, 5.25], amount };
        const wrong = (wrongs: Wrong): number => workRow(given, wrongs).total;
        const row = rowOf(given, {
          ...Object.fromEntries(titration.map((step) => [step, one])),
          total: { ...one, ...other },
        });
        const report = recheckAtOnce([
          logbookOf([rowOf(usual), row, rowOf(usual), rowOf({ ...usual, amount: 90 })]),
        ]);
        const { findings } = report;
        fc.pre(new Set(findings.map(({ mistake }) => mistake)).size > 1);
        const whole = wrong({ ...one, ...other }) - wrong({});
        for (const { effect } of findings)
          expect(Math.abs((effect?.grams ?? NaN) - whole)).toBeLessThan(1);
        const all = parts(findings);
        if (!all.some(Number.isNaN)) expect(Math.abs(sum(all) - whole)).toBeLessThan(1);
        // the overview counts the row once
        const lines = [...kindLines(report), severalLine(report) ?? { under: 0, over: 0 }];
        const counted = sum(lines.map(({ under, over }) => over - under));
        expect(Math.abs(counted - whole)).toBeLessThan(1);
      }),
      { numRuns: times(60) },
    );
  });
});

describe("the months of an overview", () => {
  it("count nothing where no column says the day", () => {
    const book = logbookOf([rowOf(usual), rowWith({ blank: 0 }, { assay: 1 })]);
    expect(monthLines(recheckAtOnce([book]), [book])).toEqual([]);
  });
});
