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
    off: fc.double({ min: -0.025, max: 0.025, noNaN: true }),
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
    const weighed = right.map((grams, at) =>
      Math.round(at === 1 ? grams * 10 : at === 4 ? grams * 0.9 : grams),
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
