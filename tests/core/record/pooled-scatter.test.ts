import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scattersMore, withUsual } from "../../../src/core/record/pooled-scatter";
import { fTail } from "../../../src/core/replicates/f-tail";
import { twoSidedTail } from "../../../src/core/replicates/student-t";

const usual = { scatter: 0.03, freedom: 20 };
const today = (scatter: number, freedom: number) => ({ squares: freedom * scatter ** 2, freedom });

describe("F", () => {
  const whole = fc.integer({ min: 1, max: 60 });
  const ratio = fc.double({ min: 0.01, max: 50, noNaN: true });

  it("with one degree of freedom above the line is the square of Student's t", () => {
    fc.assert(
      fc.property(whole, ratio, (nu, t) => {
        const tail = twoSidedTail(t, nu);
        expect(Math.abs(fTail(t * t, 1, nu) - tail)).toBeLessThanOrEqual(1e-12 * tail);
      }),
    );
  });

  it("turned upside down leaves the other tail", () => {
    fc.assert(
      fc.property(whole, whole, ratio, (a, b, f) => {
        expect(fTail(f, a, b) + fTail(1 / f, b, a)).toBeCloseTo(1, 12);
      }),
    );
  });

  it("is passed less often the larger it is, never at Infinity and always at 0", () => {
    fc.assert(
      fc.property(whole, whole, ratio, (a, b, f) => {
        expect(fTail(f * 1.01, a, b)).toBeLessThanOrEqual(fTail(f, a, b) * (1 + 1e-12));
      }),
    );
    expect([fTail(0, 3, 4), fTail(Infinity, 3, 4)]).toEqual([1, 0]);
  });
});

describe("today beside the record", () => {
  it("is put together with it, each by its degrees of freedom", () => {
    // by hand: (2 x 0.02^2 + 20 x 0.03^2) / 22
    const all = withUsual(today(0.02, 2), usual);
    expect(all.freedom).toBe(22);
    expect(all.squares).toBeCloseTo(0.0188, 15);
  });

  it("counts alone where it scatters more than the printed F at 95 % allows", () => {
    // F(0.95; 2, 20) is 3.49 in every table: 0.03 x sqrt 3.49 = 0.05604
    expect(scattersMore(today(0.056, 2), usual)).toBe(false);
    expect(scattersMore(today(0.0561, 2), usual)).toBe(true);
    expect(withUsual(today(0.0561, 2), usual)).toEqual(today(0.0561, 2));
  });

  it("is the record alone where there is one titre, and itself where there is no record", () => {
    expect(withUsual(today(0, 0), usual)).toEqual({ squares: 20 * 0.03 ** 2, freedom: 20 });
    expect(withUsual(today(0.1, 3), undefined)).toEqual(today(0.1, 3));
  });

  // F of 1 and 20 degrees of freedom is passed by 4.351 in 5 of 100 (any printed table)
  it("of two readings counts alone from one degree of freedom on", () => {
    const more = today(0.03 * Math.sqrt(4.36), 1);
    const less = today(0.03 * Math.sqrt(4.34), 1);
    expect([scattersMore(more, usual), scattersMore(less, usual)]).toEqual([true, false]);
    expect(scattersMore({ squares: 0, freedom: 0 }, usual)).toBe(false);
  });
});
