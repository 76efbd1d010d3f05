import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blendedHalfWidth, sharedHalfWidth } from "../../../src/core/batch/blend";

const lot = (share: number, halfWidth: number, shared: number) => ({ share, halfWidth, shared });

describe("the doubt of a mix's acid", () => {
  it("adds what titrant and burette bring, and the rest as squares", () => {
    // by hand, nothing in common: sqrt(0.1^2 + 0.15^2) = 0.1802776; all in common: 0.1 + 0.15
    expect(blendedHalfWidth([lot(0.25, 0.4, 0), lot(0.75, 0.2, 0)])).toBeCloseTo(0.1802776, 7);
    expect(blendedHalfWidth([lot(0.25, 0.4, 0.4), lot(0.75, 0.2, 0.2)])).toBeCloseTo(0.25, 12);
    // half and half of 0.5, of which 0.3 in common: sqrt(0.3^2 + 2 x 0.25 x 0.16) = sqrt(0.17)
    expect(blendedHalfWidth([lot(0.5, 0.5, 0.3), lot(0.5, 0.5, 0.3)])).toBeCloseTo(0.412311, 6);
  });

  it("takes limits of even chance to 95 %, as a titration's own ± does", () => {
    // by hand: 2 mg KOH/g, titrant 3 %, burette 4 %: 2 x 1.959964 x 0.05 / 1.7320508 = 0.113159
    expect(sharedHalfWidth(2, 3, 4)).toBeCloseTo(0.113159, 6);
    expect(sharedHalfWidth(2, 0, 0)).toBe(0);
  });

  const part = fc.double({ min: 0, max: 1, noNaN: true });
  const lots = fc
    .array(fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), part, part), {
      minLength: 1,
      maxLength: 7,
    })
    .map((all) => {
      const whole = all.reduce((sum, [share]) => sum + share, 0);
      return all.map(([share, halfWidth, of]) => lot(share / whole, halfWidth, halfWidth * of));
    });

  it("lies between the root of squares and the sum, goes with its unit, and knows no order", () => {
    fc.assert(
      fc.property(lots, fc.double({ min: 0.1, max: 50, noNaN: true }), (all, times) => {
        const found = blendedHalfWidth(all);
        const each = all.map(({ share, halfWidth }) => share * halfWidth);
        expect(found).toBeGreaterThanOrEqual(Math.hypot(...each) - 1e-12);
        expect(found).toBeLessThanOrEqual(each.reduce((a, b) => a + b, 0) + 1e-12);
        const scaled = all.map((one) => ({
          ...one,
          halfWidth: one.halfWidth * times,
          shared: one.shared * times,
        }));
        expect(blendedHalfWidth(scaled)).toBeCloseTo(found * times, 9);
        expect(blendedHalfWidth([...all].reverse())).toBeCloseTo(found, 12);
      }),
      { numRuns: 60 },
    );
  });
});
