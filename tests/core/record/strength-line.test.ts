import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { isProblem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";
import { quantity } from "../../../src/core/quantity/quantity";
import { strengthOn } from "../../../src/core/record/strength-line";
import { strengthInWords } from "../../../src/core/record/strength-words";

type Point = readonly [day: number, strength: number];

function lineOrNone(points: readonly Point[], day: number) {
  const set = points.map(([x, y]) => [exact(x), quantity("mol/L", y)] as const);
  return strengthOn(set, exact(day));
}

function line(points: readonly Point[], day: number) {
  const found = lineOrNone(points, day);
  if (isProblem(found)) throw new Error(say(found));
  return found;
}

/** Normal equations with a determinant, days counted from the first: no means are taken. */
function byEquations(points: readonly Point[], day: number) {
  const [start] = points[0] ?? [0];
  const sum = (of: (x: number, y: number) => number) =>
    points.reduce((total, [x, y]) => total + of(x - start, y), 0);
  const n = points.length;
  const [x, y, xx, xy] = [sum((a) => a), sum((_, b) => b), sum((a) => a * a), sum((a, b) => a * b)];
  const determinant = n * xx - x * x;
  const slope = (n * xy - x * y) / determinant;
  const start0 = (xx * y - x * xy) / determinant;
  const residuals = sum((a, b) => (b - start0 - slope * a) ** 2);
  const at = day - start;
  // leverage of the day asked, from the inverse matrix
  const leverage = (xx - 2 * at * x + n * at * at) / determinant;
  const scatter = Math.sqrt(residuals / (n - 2));
  return { strength: start0 + slope * at, slope, scatter, leverage };
}

const points = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: -30, max: 30 })), {
    minLength: 4,
    maxLength: 12,
  })
  .map((pairs) => pairs.map(([d, c]): Point => [45600 + d, Number((0.1 + c / 10000).toFixed(4))]))
  .filter((pairs) => new Set(pairs.map(([d]) => d)).size > 2);

/** t(0.975; nu) as every table prints it. */
const printedT: Record<number, number> = { 1: 12.706, 2: 4.303, 3: 3.182, 4: 2.776, 8: 2.306 };

describe("the line through the strengths of a titrant", () => {
  it("is that of the normal equations", () => {
    fc.assert(
      fc.property(points, fc.integer({ min: 45500, max: 46000 }), (set, day) => {
        const other = byEquations(set, day);
        fc.pre(other.strength > 0.01 && byEquations(set, 45600).strength > 0.01);
        const ours = line(set, day);
        expect(ours.strength.toNumber()).toBeCloseTo(other.strength, 9);
        expect(ours.scatter).toBeCloseTo(other.scatter, 9);
        expect(ours.change.toNumber()).toBeCloseTo((3000 * other.slope) / other.strength, 6);
        const t = printedT[set.length - 2];
        if (t === undefined || other.scatter < 1e-6) return;
        const width = t * other.scatter * Math.sqrt(other.leverage);
        expect(ours.halfWidth / width).toBeCloseTo(1, 3);
      }),
    );
  });

  it("does not depend on where days are counted from, nor on their order", () => {
    fc.assert(
      fc.property(points, (set) => {
        const one = lineOrNone(set, 45650);
        const moved = lineOrNone(set.map(([x, y]): Point => [x - 40000, y]).reverse(), 5650);
        if (isProblem(one) || isProblem(moved)) {
          // a steep line, far from its days, leaves no strength on either count
          expect(isProblem(moved) && say(moved)).toBe(isProblem(one) && say(one));
          return;
        }
        expect(moved.strength.toNumber()).toBeCloseTo(one.strength.toNumber(), 14);
        expect(strengthInWords(moved)).toBe(strengthInWords(one));
      }),
    );
  });

  it("says when a titrant that falls steadily leaves 1 % of its first strength", () => {
    const falling = [0, 20, 40, 60].map((day): Point => [45600 + day, 0.1 - day * 0.00002]);
    // by hand: 1 % of 0.1 at 0.00002 a day is 50 days; 30 days are 0.0006 of 0.0992
    expect(strengthInWords(line(falling, 45640))).toBe(
      "It falls by 0.6 % in 30 days, more than chance explains; by this line it stays within 1 % of the first for 50 days after it.",
    );
    expect(strengthInWords(line(falling, 45670))).toBe(
      "It falls by 0.61 % in 30 days, more than chance explains; by this line it left 1 % of the first 50 days after it, and this is day 70: set it again.",
    );
    expect(line(falling, 45640).scatter).toBe(0);
    // by hand: 0.0006 of 0.1008
    const rising = [0, 20, 40, 60].map((day): Point => [45600 + day, 0.1 + day * 0.00002]);
    expect(strengthInWords(line(rising, 45640))).toMatch(/^It rises by 0\.6 % in 30 days/);
  });

  it("takes a distance from the line below 1e-14 of the strength for a rounding error", () => {
    // by hand: what the middle of three lies off, they lie off by two thirds and one third
    const off = (by: number) =>
      line(
        [
          [1, 0.1],
          [2, Number(`0.10000000000000${String(by)}`)],
          [3, 0.1],
        ],
        2,
      ).scatter;
    expect(off(1)).toBe(0);
    expect(off(2) / 2e-15).toBeCloseTo(Math.sqrt(2 / 3), 6);
  });

  it("sees no change in equal strengths, and none in three that scatter", () => {
    const equal = [1, 2, 3].map((day): Point => [day, 0.1]);
    expect(strengthInWords(line(equal, 9))).toMatch(/^No change/);
    const three: Point[] = [
      [1, 0.1],
      [11, 0.0995],
      [21, 0.0992],
    ];
    expect(line(three, 31).isChanging).toBe(false);
  });

  it("asks for three strengths on two days, and for a day on which any is left", () => {
    const of = (set: Point[], day: number) => {
      const found = strengthOn(
        set.map(([x, y]) => [exact(x), quantity("mol/L", y)] as const),
        exact(day),
      );
      return isProblem(found) ? found.fields.code : "none";
    };
    expect(
      of(
        [
          [1, 0.1],
          [2, 0.1],
        ],
        3,
      ),
    ).toBe("too-few");
    expect(
      of(
        [
          [7, 0.1],
          [7, 0.11],
          [7, 0.1],
        ],
        8,
      ),
    ).toBe("one-day");
    expect(
      of(
        [
          [1, 0.1],
          [2, 0.09],
          [3, 0.08],
        ],
        30,
      ),
    ).toBe("no-strength-left");
    // by hand: 0.01 a day less than 0.1 on day 1 is nothing on day 11, and 0.001 on day 10.9
    const falling: Point[] = [
      [1, 0.1],
      [2, 0.09],
      [3, 0.08],
    ];
    expect(of(falling, 11)).toBe("no-strength-left");
    expect(of(falling, 10.9)).toBe("none");
    // and by hand: the line of these three comes to -0.0322 on its first day
    const steep: Point[] = [
      [1, 0.001],
      [2, 0.001],
      [3, 0.2],
    ];
    expect(of(steep, 3)).toBe("no-strength-left");
  });

  it("says one sentence of at most 200 characters", () => {
    fc.assert(
      fc.property(points, (set) => {
        // points close together may come to nothing long before that day, which is told otherwise
        const found = lineOrNone(set, 45900);
        fc.pre(!isProblem(found));
        const words = strengthInWords(found);
        expect(words.length).toBeLessThanOrEqual(200);
        expect(words).toMatch(/^[A-Z].*\.$/);
      }),
    );
  });

  // By hand: slope 0.049 / 500 a day, s 0.00009487, of the slope 0.00000424, t of two degrees 4.303.
  it("sees a change of more than t times its own scatter, and none of less", () => {
    const days = (...found: number[]) => found.map((each, at): Point => [at * 10, each]);
    expect(strengthInWords(line(days(0.1, 0.1011, 0.1019, 0.103), 30))).toMatch(
      /^It rises by 2\.9 %/,
    );
    expect(strengthInWords(line(days(0.1, 0.1005, 0.0998, 0.1003), 30))).toMatch(/^No change/);
  });

  it("stays within 1 % on the day itself on which it comes to that", () => {
    const found = line(
      [0, 20, 40].map((day): Point => [day, 0.1 + day * 0.0001]),
      10,
    );
    const days = { ...found, daysWithin: 10, daysAsked: 10 };
    expect(strengthInWords(days)).toMatch(/stays within 1 % of the first for 10 days/);
    expect(strengthInWords({ ...days, daysAsked: 11 })).toMatch(/this is day 11: set it again/);
  });

  // By hand: 0.01, 0.01 and 0.07 on three days lie about 0 + 0.03 a day.
  it("has no strength to give where it comes to just nothing, on the day or at the first", () => {
    const nothing = lineOrNone(
      [
        [1, 0.03],
        [2, 0.02],
        [3, 0.01],
      ],
      4,
    );
    expect(isProblem(nothing) && say(nothing)).toMatch(/^The line comes to 0 mol\/L/);
    expect(
      isProblem(
        lineOrNone(
          [
            [1, 0.01],
            [2, 0.01],
            [3, 0.07],
          ],
          3,
        ),
      ),
    ).toBe(true);
  });
});
