/** Gallons used as litres and the reverse, in rows worked out by hand. */
import { describe, expect, it } from "vitest";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { bareLogbook, typedConstants } from "./bare-logbook";

/** KOH of 90 %, 7 g/L pure; 2 % FFA is 20 g/kg, 3.979 g of KOH for each kg of oil. */
const causes = (unit: string, rows: readonly (readonly [number, number, number])[]) => {
  const book = bareLogbook(
    [
      ["ffa", "%"],
      ["oilAmount", undefined],
      ["amountUnit", undefined],
      ["density", "kg/L"],
      ["catalyst", "g"],
    ],
    rows.map(([oil, density, grams]) => [2, oil, unit, density, grams]),
  );
  const constants = typedConstants([
    ["base", "KOH"],
    ["assay", "90", "%"],
    ["baseCharge", "7", "g/L"],
  ]);
  return recheckAtOnce([{ ...book, mapping: { ...book.mapping, constants } }]).findings.map(
    ({ mistake, should }) => [mistake, should],
  );
};

describe("grams a litre times gallons", () => {
  it("is named where the number of gallons is used as litres all through", () => {
    // 30 L: 27 kg, 107.4 g and 210 g, 90 %: 352.7 g; 30 US gallons are 113.56 L: 406.7 g and 794.9 g
    expect(causes("us_gal", [[30, 0.9, 352.7]])).toEqual([["litres-for-gallons", "1335.1"]]);
  });

  it("is named where the charge alone is taken for each gallon", () => {
    // 406.7 g for the acid in 102.2 kg, and 7 g for each of 30 gallons: 616.7 g, 90 %
    expect(causes("us_gal", [[30, 0.9, 685.1]])).toEqual([["litres-for-gallons", "1335.1"]]);
  });

  it("is named where litres are used as gallons", () => {
    // 30 L are taken for 30 US gallons: the figures of the first case, the other way round
    expect(causes("l", [[30, 0.9, 1335.1]])).toEqual([["litres-for-gallons", "352.7"]]);
  });
});
