import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mixShares } from "../../../src/core/batch/mix-shares";
import { quantity } from "../../../src/core/quantity/quantity";

type Row = readonly [acid: number, taken: number, spare: number];

const amountOf = (rows: readonly Row[]): number => rows.reduce((sum, [, taken]) => sum + taken, 0);
const acidOf = (rows: readonly Row[]): number =>
  rows.reduce((sum, [acid, taken]) => sum + acid * taken, 0) / amountOf(rows);

/** What was taken of each lot, and what is spare of it beside that. */
const shares = (rows: readonly Row[], most: number) =>
  mixShares(
    rows.map(([acid, taken, spare], at) => ({
      lot: `L${String(at)}`,
      acidValue: quantity("mg KOH/g", acid),
      left: quantity("kg", taken + spare),
      collected: undefined,
      taken: quantity("kg", taken),
      after: quantity("kg", spare),
    })),
    quantity("kg", amountOf(rows)),
    quantity("mg KOH/g", most),
  ).map(({ lot, percent, taken, after }) => ({
    lot,
    percent: percent.toNumber(),
    taken: taken.toNumber(),
    after: after.toNumber(),
  }));

describe("the shares of a mix, as they are typed", () => {
  it("are hundredths, and a lot that has more to give takes what they leave", () => {
    // by hand: 33.333 of 100 kg is 33.33 %; all of the second is taken; the third has 5 kg more to give
    const third = 100 / 3;
    expect(
      shares(
        [
          [6, third, 40],
          [1, 50, 0],
          [3, 50 - third, 5],
        ],
        3,
      ),
    ).toMatchObject([
      { lot: "L0", percent: 33.33 },
      { lot: "L1", percent: 50, after: 0 },
      { lot: "L2", percent: 16.67 },
    ]);
  });

  const row = fc.tuple(
    fc.double({ min: 0.05, max: 40, noNaN: true }),
    fc.double({ min: 0.001, max: 900, noNaN: true }),
    fc.oneof(fc.constant(0), fc.double({ min: 0, max: 50, noNaN: true })),
  );

  it("come to a hundred, keep to the acid but for what rounds to nothing, and want next to nothing that is not there", () =>
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
        const most = acidOf(rows);
        const found = shares(rows, most);
        const hundredth = amountOf(rows) / 10000;
        expect(found.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 9);
        const lost = rows.length - found.length;
        const acid = found.reduce((sum, { lot, percent }) => {
          const [own = 0] = rows[Number(lot.slice(1))] ?? [];
          return sum + (own * percent) / 100;
        }, 0);
        expect(acid).toBeLessThanOrEqual(most * (1 + 1e-8) + (lost * 40) / 10000);
        for (const { lot, percent, taken, after } of found) {
          const [, was = 0, spare = 0] = rows[Number(lot.slice(1))] ?? [];
          expect(percent).toBeGreaterThan(0);
          expect(Number(percent.toFixed(2))).toBe(percent);
          expect(Math.abs(taken - was)).toBeLessThanOrEqual(rows.length * hundredth + 1e-9);
          expect(after).toBeCloseTo(Math.max(0, was + spare - taken), 6);
        }
      }),
    ));

  // by hand: 33.33 % of 1 and 66.67 % of 3 are 2.3334; 66.66 % of 3 and the rest of 1 are 2.3332
  it("give the last the rest where that meets the target but for a billionth, and is there", () => {
    const ofSour = (most: number, spare: number) =>
      shares(
        [
          [1, 33.335, 1],
          [3, 66.665, spare],
        ],
        most,
      ).find(({ lot }) => lot === "L1")?.percent;
    expect([2.3334, 2.333399998, 2.3333999965].map((most) => ofSour(most, 1))).toEqual([
      66.67, 66.67, 66.66,
    ]);
    expect(ofSour(3, 0)).toBe(66.66);
  });

  it("are none of no lots", () => {
    expect(mixShares([], quantity("kg", 100))).toEqual([]);
  });
});
