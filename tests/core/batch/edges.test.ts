/** Acid values at an edge or beyond all reason, batches of a millilitre and of a hundred thousand litres. */
import { describe, expect, it } from "vitest";
import { pretreatmentAdvised } from "../../../src/core/batch/route";
import { exact } from "../../../src/core/exact/exact";
import { quantity } from "../../../src/core/quantity/quantity";
import { call } from "../../functions/outcome";

const value = (id: string, ...given: unknown[]): unknown => {
  const seen = call(id, ...given);
  return "error" in seen ? seen.message : seen.value;
};
const near = (got: unknown, expected: number): void => {
  expect(Math.abs(Number(got) / expected - 1)).toBeLessThanOrEqual(1e-12);
};

describe("at the edges", () => {
  // By hand: 400 mg KOH/g is 7.1301 mol/kg: 400 g of KOH a kilogram by the definition's own 56.1.
  it("neutralises 400 mg KOH/g, and refuses to make a batch of it in a sentence", () => {
    near(value("NEUTRALISER", 1, 400, "KOH", 100), (400 / 56.1) * 56.1053);
    expect(value("CATALYST", 1, 400, "KOH", 100, 1, 30)).toMatch(/above the limit of 30 %/);
    expect(value("BATCH", 1, 400, "KOH", 100, 1, 6, null, 30)).toMatch(/above the limit of 30 %/);
    expect(value("METHANOL", 1, 6, 400)).toMatch(/198\.6/);
    expect(value("ROUTE", 400)).toMatch(/two acid steps/);
    expect(value("NEUTRALISER", 1, 400.0001, "KOH", 100)).toMatch(/400/);
  });

  // By hand: FFA % x 561 / 282 is the acid value whose % as oleic is that FFA.
  it.each([0.5, 1, 3, 5, 15])("gives a dose at %d %% FFA where that is the limit", (ffa) => {
    const acid = (ffa * 561) / 282;
    near(value("CATALYST", 100, acid, "KOH", 100, 1, ffa), 100 * ((acid / 56.1) * 56.1053) + 1000);
    expect(value("CATALYST", 100, acid * 1.000001, "KOH", 100, 1, ffa)).toMatch(/above the limit/);
  });

  it("advises an acid step from the limit on, and in the band below it if it can be had", () => {
    const advised = (ffa: number, limit: number) =>
      pretreatmentAdvised(
        quantity("mg KOH/g", exact((ffa * 561) / 282).toString()),
        quantity("%", limit),
      );
    expect([0.4, 2.99, 3, 4.99, 5, 20].map((ffa) => advised(ffa, 5))).toEqual([
      "no",
      "no",
      "if you can",
      "if you can",
      "first",
      "first",
    ]);
    expect([1.9, 2, 2.5].map((ffa) => advised(ffa, 2))).toEqual(["no", "first", "first"]);
  });

  it("takes a fat for liquid at the temperature where it is, and no colder", () => {
    near(value("SAMPLEGRAMS", 1, "coconut", 25), 0.9129 + 0.00066 * 15);
    expect(value("SAMPLEGRAMS", 1, "coconut", 24.9)).toMatch(/solid at 24\.9 C/);
  });

  it("takes a million kilograms of oil, and no more", () => {
    near(value("OILMASS", 1e6, "kg"), 1e6);
    expect(value("OILMASS", 1_000_001, "l", 1)).toMatch(/1000000/);
  });

  it("blends to the acid value of either lot, and to nothing beyond", () => {
    expect(value("BLEND", 10, 1, 10)).toBe(1);
    expect(value("BLEND", 1, 10, 10)).toBeCloseTo(0, 15);
    expect(value("BLEND", 10, 1, 1.8)).toBeCloseTo(0.8 / 9, 14);
    expect(value("BLEND", 10, 1, 10.0001)).toMatch(/blend only to values between/);
    expect(value("BLEND", 10, 1, 0.9999)).toMatch(/lots of 1 and 10 blend/);
    expect(value("BLEND", 1, 10, 0.9999)).toMatch(/lots of 1 and 10 blend/);
  });

  it("takes a methoxide of 50 % for a solid, and a weaker one for a solution", () => {
    const brought = (assay: number): unknown => {
      const rows = value("BATCH", 100, 1, "NaOCH3", assay, 0.5) as [string, unknown][];
      return rows.find(([label]) => label === "Methanol brought by a methoxide solution")?.[1];
    };
    expect(brought(50)).toBe(0);
    expect(brought(49.9)).toBeGreaterThan(0);
  });

  it("takes an assay of 100, and none above", () => {
    near(value("CATALYST", 1, 5.61, "NaOH", 100, 1), 0.1 * 39.99676928 + 10);
    expect(value("CATALYST", 1, 5.61, "NaOH", 100.01, 1)).toMatch(/100/);
  });

  // By hand: a millilitre of 0.915 kg/L; 100,000 L of it is 91,500 kg.
  it("weighs a millilitre and a hundred thousand litres by every unit alike", () => {
    near(value("OILMASS", 1, "ml"), 0.000915);
    near(value("OILMASS", 100_000, "l"), 91_500);
    const litre = Number(value("CATALYST", 0.915, 5, "KOH", 90, 0.765));
    near(value("CATALYST", 0.000915, 5, "KOH", 90, 0.765), litre / 1000);
    near(value("CATALYST", 91_500, 5, "KOH", 90, 0.765), litre * 100_000);
  });
});
