import { describe, expect, it } from "vitest";
import { scatterLimit } from "../../../src/core/record/scatter-limit";

describe("the limit of a titration's scatter", () => {
  // Factor B6 of the s chart with a known sigma, as tables print it (ISO 7870-2; ASTM MNL 7A, Table 16).
  it.each([
    [2, 2.606],
    [3, 2.276],
    [4, 2.088],
    [5, 1.964],
    [6, 1.874],
    [10, 1.669],
  ])("of %i readings is %f sigma", (count, factor) => {
    expect(scatterLimit(count, 1)).toBeCloseTo(factor, 3);
    expect(scatterLimit(count, 0.03)).toBeCloseTo(0.03 * factor, 4);
  });
});
