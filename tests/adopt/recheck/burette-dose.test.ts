/** A dose read off the burette whose charge took litres for kilograms, worked out by hand. */
import { expect, it } from "vitest";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { mistakesIn } from "../../../src/adopt/recheck/reporting/cause-words";
import { bareLogbook, typedConstants } from "./bare-logbook";

it("a density taken as 1 is named where the acid's part is read off the burette", () => {
  // 10 mL of oil takes 5 mL of 1 g/L of KOH: 0.5 g/L; 8 g/kg. Of 100 L of 0.9 kg/L 50 g and 720 g: 855.6 g of
  // 90 %; with 1 for the density in sample and batch 50 g and 800 g: 944.4 g.
  const row = (net: number, litres: number, density: number) => [
    net + 0.2,
    0.2,
    10,
    litres,
    0.9,
    Number(((litres * (net / 10 + 8 * density)) / 0.9).toFixed(1)),
  ];
  const book = bareLogbook(
    [
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleVolume", "mL"],
      ["oilAmount", "L"],
      ["density", "kg/L"],
      ["catalyst", "g"],
    ],
    [row(5, 100, 1), row(4, 80, 0.9), row(6, 120, 0.9), row(7, 90, 0.9), row(3, 110, 0.9)],
  );
  const constants = typedConstants([
    ["base", "KOH"],
    ["titrantBase", "KOH"],
    ["assay", "90", "%"],
    ["strength", "1", "g/L"],
    ["baseCharge", "8", "g/kg"],
  ]);
  const pure = constants.map((each) =>
    each.role === "strength" ? { ...each, basis: "pure" as const } : each,
  );
  const { findings } = recheckAtOnce([{ ...book, mapping: { ...book.mapping, constants: pure } }]);
  expect(findings.map(({ row, should }) => [row, should])).toEqual([[1, "855.6"]]);
  expect(findings.flatMap(mistakesIn)).toContain("density-as-one");
});
