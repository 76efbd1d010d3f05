import { expect, it } from "vitest";
import { asCharged } from "../../../src/core/batch/as-charged";
import { isProblem } from "../../../src/core/problem/problem";
import { quantity } from "../../../src/core/quantity/quantity";
import { oilNotNamed } from "../../../src/core/reference/oils";

const assay = quantity("%", "90");
const figure = (given: Parameters<typeof asCharged>[0]): number => {
  const found = asCharged(given, assay, oilNotNamed);
  if (isProblem(found)) throw new Error("a problem");
  return found.toNumber();
};

// By hand: 7 g/L of pure base in 915 g of oil is 0.76503 %; the same as lye of 90 % is 0.68852 %.
it("brings every way to give a base charge to percent of pure base", () => {
  const seven = quantity("g/L", "7");
  const one = quantity("%", "1");
  expect(figure({ unit: "g/L", amount: seven, is: "pure" })).toBeCloseTo(0.765027, 6);
  expect(figure({ unit: "g/L", amount: seven, is: "as weighed" })).toBeCloseTo(0.688525, 6);
  expect(figure({ unit: "%", amount: one, is: "pure" })).toBe(1);
  expect(figure({ unit: "%", amount: one, is: "as weighed" })).toBe(0.9);
});
