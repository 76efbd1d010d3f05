/** Figures as a person reads them: what stands side by side fits together. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { doubtText, partsShown } from "../../../src/taskpane/widgets/shown-number";
import { times } from "../../thorough";

describe("a figure and its ±", () => {
  it("have two digits in the ±, and end at the same place, whatever their size", () => {
    const size = fc.tuple(fc.integer({ min: 10, max: 99 }), fc.integer({ min: -5, max: 4 }));
    const value = fc.double({ min: 0.001, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, size, (figure, [two, power]) => {
        const half = Number(`${String(two)}e${String(power)}`);
        const text = doubtText(exact(figure), half, 2);
        const [shown = "", doubt = ""] = text.split(" ± ");
        expect(Number(doubt)).toBeCloseTo(half, 9);
        const placesOf = (digits: string) => (digits.split(".")[1] ?? "").length;
        expect(placesOf(shown)).toBe(placesOf(doubt));
        expect(placesOf(doubt)).toBe(Math.max(0, -power));
        expect(Math.abs(Number(shown) - figure)).toBeLessThanOrEqual(10 ** power / 2 + 1e-9);
        // tens and hundreds are rounded too
        if (power > 0) expect(Number(shown) % 10 ** power).toBe(0);
      }),
      { numRuns: times(100) },
    );
    expect(doubtText(exact("1.9746"), undefined, 2)).toBe("1.97");
  });
});

describe("parts of a whole", () => {
  it("add up to it as they are shown, each within a step of what it is", () => {
    // by hand: 76.05 and 23.95 both end in a half
    expect(partsShown([exact("76.05"), exact("23.95")], 1)).toEqual(["76.1", "23.9"]);
    const cuts = fc.array(fc.integer({ min: 1, max: 9_999_999 }), { minLength: 0, maxLength: 11 });
    fc.assert(
      fc.property(cuts, fc.integer({ min: 0, max: 2 }), (inner, places) => {
        const ends = [0, ...inner.sort((a, b) => a - b), 10_000_000];
        const parts = ends.slice(1).map((end, at) => (end - (ends[at] ?? 0)) / 1e5);
        const shown = partsShown(parts.map(exact), places).map(Number);
        const total = shown.reduce((sum, each) => sum + each, 0);
        expect(total).toBeCloseTo(100, 9);
        shown.forEach((each, at) => {
          expect(Math.abs(each - (parts[at] ?? 0))).toBeLessThan(10 ** -places + 1e-9);
        });
      }),
      { numRuns: times(100) },
    );
  });
});
