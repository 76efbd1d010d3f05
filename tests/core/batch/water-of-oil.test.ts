import { describe, expect, it } from "vitest";
import { waterOfOil } from "../../../src/core/batch/water-words";
import { exact } from "../../../src/core/exact/exact";

describe("the caution of the oil's own water", () => {
  it("stands unless the water is known to be little: 0.06 % of the mass, Ma 1998", () => {
    expect(waterOfOil(undefined)).toContain("is not measured: dry the oil");
    expect(waterOfOil(exact("0.09"))).toBe(
      "Too wet: 0.09 % water. Dry the oil to 0.06 % or less before anything is weighed.",
    );
    expect(waterOfOil(exact("0.06"))).toBeUndefined();
  });
});
