import { describe, expect, it } from "vitest";
import { waterOfOil } from "../../../src/core/batch/water-words";
import { exact } from "../../../src/core/exact/exact";

describe("the caution of the oil's own water", () => {
  it("stands unless the water is known to be little: 0.06 % of the mass, Ma 1998", () => {
    expect(waterOfOil(undefined)).toContain("is not measured: dry the oil");
    expect(waterOfOil(exact("0.09"))).toBe(
      "The oil holds 0.09 % of water, above 0.06 %: dry it first.",
    );
    expect(waterOfOil(exact("0.06"))).toBeUndefined();
  });
});
