import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { sampleToWeigh } from "../../../src/core/titration/free-fatty-acid";

describe("the sample that brings the titre to a target", () => {
  // By hand: 0.1 mol/L x 10 mL x 282 g/mol / (10 x 5 %) = 5.64 g; at 0.5 % ten times as much.
  it.each([
    ["5", 5.64],
    ["0.5", 56.4],
  ])("falls as the acid rises: at %s %% as oleic, %s g", (ffa, grams) => {
    const found = sampleToWeigh(quantity("%", ffa), quantity("mol/L", "0.1"), quantity("mL", "10"));
    expect(found.toNumber()).toBe(grams);
  });
});
