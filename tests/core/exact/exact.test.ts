import { describe, expect, it } from "vitest";
import { computed, exact, isExact } from "../../../src/core/exact/exact";

describe("a double out of a cell", () => {
  // By hand: a spreadsheet shows and keeps 15 digits.
  it.each([
    [0.1 + 0.2, "0.3"],
    [1.23456789012345, "1.23456789012345"],
    [1.234567890123456, "1.23456789012346"],
    [-1.234567890123456, "-1.23456789012346"],
    [0.000123456789012345, "0.000123456789012345"],
    [2.675, "2.675"],
    [999999999999999, "999999999999999"],
    [-999999999999999, "-999999999999999"],
    [1234567890123456, "1234567890123460"],
    [-1234567890123456, "-1234567890123460"],
    [123456789012345.67, "123456789012346"],
    [4.35, "4.35"],
    [1, "1"],
  ])("enters by its 15 digits: %d as %s", (double, digits) => {
    expect(exact(double).toFixed()).toBe(digits);
  });

  it("that was worked out here keeps every digit", () => {
    expect(computed(0.1 + 0.2).toString()).toBe("0.30000000000000004");
  });

  it("has 34 digits to be worked with, halves away from zero", () => {
    expect(exact(1).div(3).toString()).toBe(`0.${"3".repeat(34)}`);
    expect(exact(2).div(3).toString()).toBe(`0.${"6".repeat(33)}7`);
    expect(isExact(exact(1))).toBe(true);
    expect(isExact(1)).toBe(false);
  });
});
