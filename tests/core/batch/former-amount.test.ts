import { describe, expect, it } from "vitest";
import { formerAmount, isByFraction } from "../../../src/core/batch/former-amount";
import { quantity } from "../../../src/core/quantity/quantity";

/** A litre of oil of 0.915 kg at 2 % FFA; KOH at 7 g/L pure: 915 x 0.02 x 56.1053 / 282.468 = 3.63484 g. */
const litre = {
  pureForAcid: quantity("g", "3.63484"),
  pureForReaction: quantity("g", "7"),
  assay: quantity("%", "100"),
};

describe("what used to be weighed", () => {
  // By hand: 7 x 1.02 = 7.14; 7.14 - 10.63484 = -3.49484; 3.49484 / 3.63484 = 96.148 %;
  // (7.14 - 3.63484) / 7 = 3.50516 / 7 = 50.074 %.
  it("falls 3.49 g short by the fraction rule at 2 %, which is 96 % of the acid or half the charge", () => {
    const found = formerAmount(quantity("g", "7.14"), litre);
    expect(found.difference.toNumber()).toBeCloseTo(-3.49484, 10);
    expect(found.acidLeft.toNumber()).toBeCloseTo(0.96148, 5);
    expect(found.chargeLeft.toNumber()).toBeCloseTo(0.50074, 5);
  });

  // By hand: 10.63484 / 0.9 = 11.81649 g as weighed.
  it("is right when it is the dose at the lye's assay, and nothing is left of the acid", () => {
    const found = formerAmount(quantity("g", "11.8164888888889"), {
      ...litre,
      assay: quantity("%", "90"),
    });
    expect(found.difference.toNumber()).toBeCloseTo(0, 10);
    expect(found.acidLeft.toNumber()).toBeCloseTo(0, 10);
    expect(found.chargeLeft.toNumber()).toBeCloseTo(1, 10);
  });

  it("leaves all the acid and no charge when hardly any was weighed, never more than all or less than none", () => {
    const little = formerAmount(quantity("g", "1"), litre);
    expect([little.acidLeft.toNumber(), little.chargeLeft.toNumber()]).toEqual([1, 0]);
    const much = formerAmount(quantity("g", "40"), litre);
    expect([much.acidLeft.toNumber(), much.chargeLeft.toNumber()]).toEqual([0, 1]);
  });

  it("is known for the fraction rule, with the charge divided by the assay or not", () => {
    const ffa = quantity("%", "2");
    const at90 = { ...litre, assay: quantity("%", "90") };
    expect(isByFraction(quantity("g", "7.14"), ffa, litre)).toBe(true);
    expect(isByFraction(quantity("g", "7.14"), ffa, at90)).toBe(true);
    // 7.14 / 0.9 = 7.9333
    expect(isByFraction(quantity("g", "7.93"), ffa, at90)).toBe(true);
  });

  // By hand: the rule adds 0.14 g to the charge of 7 g; a quarter of that is 0.035 g.
  it("is known for the fraction rule a quarter of what it adds away, and no farther", () => {
    const isIt = (grams: string) => isByFraction(quantity("g", grams), quantity("%", "2"), litre);
    expect(["7.105", "7.175"].map(isIt)).toEqual([true, true]);
    expect(["7.1049", "7.1751"].map(isIt)).toEqual([false, false]);
  });

  it("is not taken for that rule when it is the charge alone or the dose", () => {
    const ffa = quantity("%", "2");
    expect(isByFraction(quantity("g", "7"), ffa, litre)).toBe(false);
    expect(isByFraction(quantity("g", "10.63"), ffa, litre)).toBe(false);
  });
});
