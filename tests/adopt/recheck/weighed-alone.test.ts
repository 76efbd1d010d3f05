/**
 * A logbook that holds what was weighed and no dose: weighed as people weigh, a little over or under.
 * Doses by hand (rows.ts).
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { times } from "../../thorough";
import { lyeBook } from "./lye-book";
import { type Given, usual, workRow } from "./rows";

const bookOf = (rows: readonly Given[], weighed: readonly number[]): Logbook =>
  lyeBook(rows, [["weighed", "g"]], (_, at) => [weighed[at] ?? ""]);

const rowsOf = fc.array(
  fc.record({
    titre: fc.integer({ min: 100, max: 600 }),
    amount: fc.integer({ min: 60, max: 400 }),
    // further off than rounding takes a figure that was worked out
    off: fc
      .tuple(fc.double({ min: 0.008, max: 0.025, noNaN: true }), fc.constantFrom(-1, 1))
      .map(([share, sign]) => share * sign),
  }),
  { minLength: 5, maxLength: 10 },
);

describe("what was weighed, where no column holds a dose", () => {
  it("is checked, and accused of nothing within what people weigh to; that is said", () => {
    fc.assert(
      fc.property(rowsOf, (all) => {
        const rows = all.map(({ titre, amount }): Given => ({
          ...usual,
          titres: [titre / 100],
          amount,
        }));
        const weighed = rows.map((row, at) =>
          Math.round(workRow(row).total * (1 + (all[at]?.off ?? 0))),
        );
        const report = recheckAtOnce([bookOf(rows, weighed)]);
        expect(report.findings).toEqual([]);
        expect(report.noDose).toBe("");
        expect(report.checked.dose).toBe(rows.length);
        expect(report.taken.join()).toContain("for the dose, since no column holds one");
      }),
      { numRuns: times(40) },
    );
  });

  it("is told with its grams where it is ten times as much, or lacks what the assay asks for", () => {
    const rows = [2.1, 3.4, 5.2, 4.4, 2.8, 3.9].map((titre): Given => ({
      ...usual,
      titres: [titre],
    }));
    const right = rows.map((row) => workRow(row).total);
    // one in a hundred over or under, but for the two that are looked at
    const byHand = (at: number): number => (at === 1 || at === 4 ? 0 : at % 2 === 0 ? 0.01 : -0.01);
    const weighed = right.map((grams, at) =>
      Math.round((at === 1 ? grams * 10 : at === 4 ? grams * 0.9 : grams) * (1 + byHand(at))),
    );
    const { findings } = recheckAtOnce([bookOf(rows, weighed)]);
    // of causes that come as near as people weigh, none is named
    expect(findings.map(({ label, mistake }) => [label, mistake])).toEqual([
      ["NQ-1", "decimal-slip"],
      ["NQ-4", "not-recognised"],
    ]);
    expect(findings[0]?.effect?.grams).toBeCloseTo(9 * (right[1] ?? 0), -1);
    expect(findings[1]?.effect?.grams).toBeCloseTo(-0.1 * (right[4] ?? 0), -1);
  });
});

describe("grams that were put in, so the heading says, and that a rule gives to the digit", () => {
  const amounts = [100, 120, 90, 140, 110, 160, 130, 105];
  const rows = [2.1, 3.4, 5.2, 4.4, 2.8, 3.9, 3.1, 4.8].map((titre, at): Given => ({
    ...usual,
    titres: [titre],
    amount: amounts[at] ?? 100,
  }));

  it("are a dose that was worked out: the FFA fraction times the base charge is named in each row", () => {
    const byRule = rows.map((row) => Math.round(workRow(row, { byCharge: true }).total));
    const { findings, taken } = recheckAtOnce([bookOf(rows, byRule)]);
    expect(findings.map(({ mistake }) => mistake)).toEqual(rows.map(() => "acid-by-charge"));
    expect(taken.join()).toContain("follows from its readings to the last digit");
  });

  it("are held to their digits where they are right, so that a wrong one is told by its name", () => {
    const worked = rows.map((row, at) =>
      Math.round(workRow(row, at === 3 ? { blank: 0 } : {}).total),
    );
    const { findings } = recheckAtOnce([bookOf(rows, worked)]);
    expect(findings.map(({ label, mistake }) => [label, mistake])).toEqual([
      ["NQ-3", "blank-not-subtracted"],
    ]);
  });
});
