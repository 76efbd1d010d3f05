import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { quantity } from "../../../src/core/quantity/quantity";
import { criticalRange } from "../../../src/core/replicates/critical-range";
import { replicatesNeeded } from "../../../src/core/replicates/replicates-needed";
import { scatterOf } from "../../../src/core/replicates/spread";
import { mL, readings, setOf } from "./readings";

const percent = (value: number) => quantity("%", value);
const needed = (deviation: number, halfWidth: number, confidence = 95) =>
  replicatesNeeded(mL(deviation), mL(halfWidth), percent(confidence));

describe("the spread of replicates", () => {
  it("of 2.40, 2.50, 2.45 is s 0.05, range 0.10, interval 0.1242 (worked by hand)", () => {
    const scatter = scatterOf(setOf([2.4, 2.5, 2.45]));
    expect(scatter?.deviation).toBeCloseTo(0.05, 15);
    expect(scatter?.relative).toBeCloseTo(100 / 49, 12);
    expect(scatter?.range.toString()).toBe("0.1");
    expect(scatter?.halfWidth).toBeCloseTo(0.124207, 6);
  });

  it("is exactly 0 for equal readings and unknown for one", () => {
    expect(scatterOf(setOf([4.35, 4.35, 4.35, 4.35, 4.35, 4.35]))).toMatchObject({
      deviation: 0,
      relative: 0,
      halfWidth: 0,
    });
    expect(scatterOf(setOf([4.35]))).toBeUndefined();
  });

  it("does not depend on the order of readings, and the range is never less than the deviation", () => {
    fc.assert(
      fc.property(readings(2, 100), (values) => {
        const one = scatterOf(setOf(values));
        const other = scatterOf(setOf([...values].reverse()));
        expect(other?.deviation).toBeCloseTo(one?.deviation ?? 0, 12);
        expect(one?.range.toNumber()).toBeGreaterThanOrEqual((one?.deviation ?? 0) / Math.SQRT2);
      }),
    );
  });
});

describe("the number of replicates needed", () => {
  it("is 7, 11 and 5 for a half-width of one standard deviation at 95, 99 and 90 %", () => {
    expect([needed(0.05, 0.05), needed(0.05, 0.05, 99), needed(0.05, 0.05, 90)]).toEqual([
      7, 11, 5,
    ]);
  });

  // By hand: t of one degree at 50 % is 1, of two the root of 2/3: s / sqrt 2 for two, s sqrt 2 / 3 for three.
  it("allows a half-width that is met but for a billionth, and no more", () => {
    const [two, three] = [Math.SQRT1_2, Math.SQRT2 / 3];
    expect(needed(1, two, 50)).toBe(2);
    expect(needed(1, two * (1 - 0.9e-9), 50)).toBe(2);
    expect(needed(1, two * (1 - 1.2e-9), 50)).toBe(3);
    expect(needed(1, three * (1 - 0.9e-9), 50)).toBe(3);
    expect(needed(1, three * (1 - 1.2e-9), 50)).toBe(4);
  });

  it("is at least 2, and beyond 100 a problem that names both figures", () => {
    expect(needed(0.001, 10)).toBe(2);
    const found = needed(5, 0.01);
    expect(isProblem(found) && found.fields.code).toBe("too-many-replicates");
  });

  it("never falls when the scatter grows", () => {
    const size = fc.integer({ min: 1, max: 200 }).map((n) => n / 1000);
    fc.assert(
      fc.property(size, size, (deviation, more) => {
        const few = needed(deviation, 0.1);
        const many = needed(deviation + more, 0.1);
        if (!isProblem(few) && !isProblem(many)) expect(many).toBeGreaterThanOrEqual(few);
        if (isProblem(few)) expect(isProblem(many)).toBe(true);
      }),
    );
  });
});

describe("the critical range", () => {
  it("is the printed factor times the repeatability, for 2 to 10 results", () => {
    expect(criticalRange(3, 0.05)).toBeCloseTo(0.165, 15);
    expect(criticalRange(1, 0.05)).toBeUndefined();
    expect(criticalRange(11, 0.05)).toBeUndefined();
  });
});
