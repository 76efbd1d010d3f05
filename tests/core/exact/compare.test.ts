import { describe, expect, it } from "vitest";
import { atLeast, atMost } from "../../../src/core/exact/compare";
import { exact } from "../../../src/core/exact/exact";

describe("a comparison with a limit", () => {
  // By hand: a billionth of 5 is 0.000000005.
  it("lets a figure miss it by a billionth of it, itself allowed, and by no more", () => {
    expect(atMost(exact("5.000000005"), exact(5))).toBe(true);
    expect(atMost(exact("5.000000006"), exact(5))).toBe(false);
    expect(atLeast(exact("4.999999995"), exact(5))).toBe(true);
    expect(atLeast(exact("4.999999994"), exact(5))).toBe(false);
  });
});
