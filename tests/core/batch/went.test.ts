import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chargeLeft,
  lyeMeans,
  type Weighed,
  wentLimits,
  wentPlaces,
  wentWords,
  yieldPercent,
} from "../../../src/core/batch/went";
import { exact } from "../../../src/core/exact/exact";
import { quantity } from "../../../src/core/quantity/quantity";

const batch = (some: { weighed: number; used?: number; half?: number }): Weighed => ({
  catalyst: quantity("g", 1046),
  weighed: quantity("g", some.weighed),
  oil: quantity("kg", 91.5),
  used: quantity("kg", some.used ?? 91.5),
  assay: quantity("%", 90),
  charge: quantity("%", 0.765),
  halfWidth: some.half === undefined ? undefined : quantity("g", some.half),
});

describe("what the difference between weighed and worked out means", () => {
  it("is told as the base that was left for the reaction", () => {
    // by hand: 0.765 + 0.9 x (910 - 1046)/915 = 0.765 - 0.13377 = 0.63123
    expect(chargeLeft(batch({ weighed: 910 })).toNumber()).toBeCloseTo(0.6312295, 6);
    expect(lyeMeans(batch({ weighed: 910 }))).toBe(
      "Less lye than meant: 0.631 % of the oil was left for the reaction, not 0.765 %. Expect oil in the methanol trial.",
    );
    expect(lyeMeans(batch({ weighed: 1200 }))).toMatch(/^More lye than meant: 0\.916 %.*more soap/);
    // the acid part alone is 1046 - 777.75 = 268.25 g
    expect(lyeMeans(batch({ weighed: 260 }))).toMatch(/^Too little lye/);
  });

  it("is none within the dose's own ±, or a hundredth of it", () => {
    expect(lyeMeans(batch({ weighed: 1056 }))).toBe("Lye as meant.");
    expect(lyeMeans(batch({ weighed: 1062 }))).toMatch(/^More/);
    expect(lyeMeans(batch({ weighed: 1062, half: 20 }))).toBe("Lye as meant.");
  });

  // By hand: a hundredth of 1046 g is 10.46 g; 500 g of 1000 on 100 kg leave 0.5 - 0.1 x (10 - 5) = 0 %.
  it("is as meant at the edge itself, and nothing is left where the acid took just all", () => {
    expect([1056.46, 1035.54].map((weighed) => lyeMeans(batch({ weighed })))).toEqual([
      "Lye as meant.",
      "Lye as meant.",
    ]);
    expect(lyeMeans(batch({ weighed: 1056.47 }))).toMatch(/^More/);
    expect(lyeMeans(batch({ weighed: 1035.53 }))).toMatch(/^Less/);
    expect(lyeMeans(batch({ weighed: 1066, half: 20 }))).toBe("Lye as meant.");
    expect(lyeMeans(batch({ weighed: 1066.01, half: 20 }))).toMatch(/^More/);
    const plain = { ...batch({ weighed: 500 }), catalyst: quantity("g", 1000) };
    const hundred = { oil: quantity("kg", 100), used: quantity("kg", 100) };
    const half = { charge: quantity("%", "0.5"), assay: quantity("%", 100) };
    expect(lyeMeans({ ...plain, ...hundred, ...half })).toMatch(/^Too little lye/);
    expect(lyeMeans({ ...plain, ...hundred, ...half, weighed: quantity("g", "500.1") })).toMatch(
      /^Less lye than meant: 0\.000 %/,
    );
  });

  it("has limits, digits and a full stop that the sheet's formula takes too", () => {
    expect([wentLimits, wentPlaces, wentWords.end]).toEqual([
      { lye: "0.01", methanol: "0.02", made: "1.1" },
      { charge: 3, ratio: 2 },
      ".",
    ]);
  });

  it("does not change when oil and lye are both twice as much", () =>
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 3000 }), (weighed) => {
        const twice = batch({ weighed: 2 * weighed, used: 183 });
        expect(chargeLeft(twice).toNumber()).toBeCloseTo(
          chargeLeft(batch({ weighed })).toNumber(),
          12,
        );
      }),
      { numRuns: 30 },
    ));

  it("counts fuel by the oil's own volume at 20 C", () => {
    // by hand: 96 L of 91.5 kg at 0.915 kg/L, that is of 100 L
    expect(yieldPercent(exact(96), quantity("kg", 91.5), exact("0.915")).toNumber()).toBeCloseTo(
      96,
      12,
    );
  });
});
