import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { studentT, twoSidedTail } from "../../../src/core/replicates/student-t";

const freedom = fc.integer({ min: 1, max: 400 });

describe("Student t", () => {
  it("has the closed forms of one and two degrees of freedom, computed here at 40 digits", () => {
    expect(studentT(0.05, 1)).toBeCloseTo(12.706204736174705, 12);
    expect(studentT(0.05, 2)).toBeCloseTo(4.302652729749464, 12);
    expect(twoSidedTail(Math.sqrt(3), 1)).toBeCloseTo(1 / 3, 15);
  });

  it("is exceeded with the probability it was asked for", () => {
    fc.assert(
      fc.property(freedom, fc.double({ min: 1e-7, max: 0.99, noNaN: true }), (nu, outside) => {
        const back = twoSidedTail(studentT(outside, nu), nu);
        expect(Math.abs(back - outside)).toBeLessThanOrEqual(1e-11 * outside);
      }),
    );
  });

  it("falls as degrees of freedom are added, and rises with the confidence", () => {
    fc.assert(
      fc.property(freedom, fc.double({ min: 1e-6, max: 0.5, noNaN: true }), (nu, outside) => {
        expect(studentT(outside, nu + 1)).toBeLessThan(studentT(outside, nu));
        expect(studentT(outside / 2, nu)).toBeGreaterThan(studentT(outside, nu));
      }),
    );
  });

  it("leaves everything outside 0 and nothing outside infinity", () => {
    for (const nu of [1, 2, 3, 10, 99]) {
      expect(twoSidedTail(0, nu)).toBe(1);
      expect(twoSidedTail(Number.POSITIVE_INFINITY, nu)).toBe(0);
      expect(twoSidedTail(1e300, nu)).toBeGreaterThanOrEqual(0);
    }
  });
});
