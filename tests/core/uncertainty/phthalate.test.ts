import { describe, expect, it } from "vitest";
import { phthalatePercent } from "../../../src/core/uncertainty/phthalate";

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
});
