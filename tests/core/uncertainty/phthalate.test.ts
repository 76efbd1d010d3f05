import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { doseHalfWidth } from "../../../src/core/uncertainty/dose-interval";
import {
  phthalatePercent,
  phthalatePerMolarity,
  standardisedPercent,
} from "../../../src/core/uncertainty/phthalate";

/** By hand, %: 196 sqrt( step^2/6/m^2 + 2 x 0.05^2/6/25^2 + 0.0005^2/3 ). */
describe("what a check against KHP reaches", () => {
  it.each([
    [0.51, 0.01, 1.5862],
    [0.51, 0.001, 0.2811],
    [5.1, 0.01, 0.2811],
    [0.51, 0.0001, 0.2338],
  ])("%s g on a balance that shows %s g: ±%s %%", (mass, massStep, percent) => {
    const found = phthalatePercent({ mass, massStep, titre: 25, titreStep: 0.05 });
    expect(found).toBeCloseTo(percent, 3);
  });

  // 204.2223 g/mol: 5.10556 g to 25 mL of 1 mol/L; by hand as above, of 0.510556 g
  it("takes KHP for 25 mL of the bench's own titrant", () => {
    expect(phthalatePerMolarity).toBeCloseTo(5.1055575, 7);
    const found = standardisedPercent({ molarity: 0.1, massStep: 0.01, titreStep: 0.05 });
    expect(found).toBeCloseTo(1.58453, 4);
  });

  // by hand: 300 g of lye for the acid, 0.1 in 1.5 % FFA
  it("is doubt of the acid part of a dose alone", () => {
    expect(doseHalfWidth(quantity("g", "300"), 0.1, 1.5).toNumber()).toBeCloseTo(20, 12);
  });
});
