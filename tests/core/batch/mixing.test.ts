import { describe, expect, it } from "vitest";
import { startBelow, temperatureRise } from "../../../src/core/batch/mixing";
import { quantity } from "../../../src/core/quantity/quantity";

const trial = {
  lye: quantity("g", "10"),
  methanol: quantity("L", "0.1"),
  rise: quantity("C", "22"),
};
const said = (grams: string, litres: string) =>
  startBelow(temperatureRise(quantity("g", grams), quantity("L", litres), trial));

describe("the warmth of methoxide", () => {
  // by hand: 22 × (909 / 24.9) / (10 / 0.1) = 8.03, 45 − 8.03 = 36.97
  it("says below what to begin", () => {
    expect(said("909", "24.9")).toBe(
      "All of this lye at once would warm the methanol by about 8 °C: begin with methanol below 37 °C, add the lye in small portions, stop at 45 °C.",
    );
  });

  // 22 × 12 / 10 = 26.4, and 45 − 26.4 is colder than a shed
  it("says that much lye in little methanol cannot go in at once", () => {
    expect(said("120", "1")).toMatch(/26\.4 °C: it cannot be kept below 45 °C in one go/);
  });

  // by hand: a litre of methanol and 11 g make 22 x 11 / 10 x 0.1 / 1 = 2.42; 45 - 25 is the shed's own 20
  it("tells its limits in whole degrees, and tells portions over an hour only below 20 °C", () => {
    expect(said("11", "1")).toMatch(/by about 2\.4 °C: begin with methanol below 43 °C/);
    const warmed = (degrees: string) => startBelow(quantity("C", degrees));
    expect(warmed("25")).toMatch(/by about 25 °C: begin with methanol below 20 °C/);
    expect(warmed("25.01")).toMatch(/in one go\. Cool the vessel/);
    expect(warmed("24.5")).toMatch(/begin with methanol below 21 °C/);
  });
});
