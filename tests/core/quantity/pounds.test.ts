import { expect, it } from "vitest";
import { inPounds } from "../../../src/core/quantity/pounds";
import { quantity } from "../../../src/core/quantity/quantity";

// 1 lb = 453.59237 g exactly. By hand: 1287 - 2 x 453.59237 = 379.81526 g; / 28.349523125 = 13.398 oz.
it.each([
  ["1287", "2", "13.4"],
  ["453.59237", "1", "0"],
  // 15.96 oz rounds up to a whole pound, not to 16 oz
  ["452.5", "1", "0"],
  ["28.349523125", "0", "1"],
])("says %s g as %s lb %s oz", (grams, pounds, ounces) => {
  const found = inPounds(quantity("g", grams));
  expect([found.pounds.toString(), found.ounces.toString()]).toEqual([pounds, ounces]);
});
