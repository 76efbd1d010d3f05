import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { rounded, shown, shownAbove, shownBelow } from "../../../src/core/exact/rounding";

describe("a figure inside a sentence", () => {
  it("has ten digits at most, halves away from zero", () => {
    expect(shown(exact("1.23456789012"))).toBe("1.23456789");
    expect(shown(exact("1.2345678905"))).toBe("1.234567891");
    expect(shown(exact("-1.2345678905"))).toBe("-1.234567891");
    expect(rounded(exact("2.345"), 2).toString()).toBe("2.35");
  });

  it.each([
    ["6.28", "5", "6.3"],
    ["5.0003", "5", "5.0003"],
    ["5.000000001", "5", "5.000000001"],
    ["5.00000000000001", "5", "5"],
    ["1234.56", "1000", "1200"],
  ])("is shown above a limit by as few digits as show it: %s above %s", (value, limit, text) => {
    expect(shownAbove(exact(value), exact(limit))).toBe(text);
  });

  it.each([
    ["4.1234", "5", "4.12"],
    ["4.99984", "5", "4.9998"],
    ["4.999999999", "5", "4.999999999"],
    ["4.99999999999999", "5", "5"],
  ])("is shown below a limit by as few digits as show it: %s below %s", (value, limit, text) => {
    expect(shownBelow(exact(value), exact(limit))).toBe(text);
  });
});
