/** Kilograms used as litres, and litres as kilograms in a logbook whose own density cancels, worked out by hand. */
import { describe, expect, it } from "vitest";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { bareLogbook, typedConstants } from "./bare-logbook";
import { round } from "./rows";

type Columns = Parameters<typeof bareLogbook>[0];

const causes = (columns: Columns, rows: readonly (readonly LogbookValue[])[]) => {
  const book = bareLogbook(columns, rows);
  const constants = typedConstants([
    ["base", "KOH"],
    ["assay", "85", "%"],
    ["baseCharge", "7", "g/L"],
  ]);
  return recheckAtOnce([{ ...book, mapping: { ...book.mapping, constants } }]).findings.map(
    ({ row, mistake, should }) => [row, mistake, should],
  );
};

/** KOH of 85 %, 7 g/L pure; 2 % FFA is 20 g/kg, 3.979 g of KOH for each kg of oil, which weighs 0.9 kg a litre. */
const weighed: Columns = [
  ["ffa", "%"],
  ["oilAmount", "kg"],
  ["density", "kg/L"],
  ["catalyst", "g"],
];

describe("kilograms taken for litres", () => {
  it("are named where the charge alone is taken for each kilogram", () => {
    // 100 kg: 397.9 g; they fill 111.11 L, 777.8 g: 1175.7 g, of 85 % 1383.2 g; with 700 g 1291.7 g
    expect(causes(weighed, [[2, 100, 0.9, 1291.7]])).toEqual([
      [1, "kilograms-as-litres", "1383.2"],
    ]);
  });

  it("are named where the oil is weighed once more, as if it were litres", () => {
    // 90 kg: 358.1 g, with 700 g 1058.1 g, of 85 % 1244.8 g
    expect(causes(weighed, [[2, 100, 0.9, 1244.8]])).toEqual([
      [1, "kilograms-as-litres", "1383.2"],
    ]);
  });

  it("are named where litres were measured and their kilograms stand beside them", () => {
    const both: Columns = [
      ["ffa", "%"],
      ["oilAmount", "L"],
      ["oilMass", "kg"],
      ["density", "kg/L"],
      ["catalyst", "g"],
    ];
    // 100 L are 90 kg: 358.1 g and 700 g, of 85 % 1244.8 g; with 630 g 1162.5 g
    expect(causes(both, [[2, 100, 90, 0.9, 1162.5]])).toEqual([
      [1, "kilograms-as-litres", "1244.8"],
    ]);
  });

  it("are no mistake where the charge goes by the kilogram", () => {
    const book = bareLogbook(weighed, [[2, 100, 0.9, 1291.7]]);
    // 0.7 %: 397.9 g and 700 g
    const constants = typedConstants([
      ["base", "KOH"],
      ["assay", "85", "%"],
      ["baseCharge", "0.7", "%"],
    ]);
    const { findings } = recheckAtOnce([{ ...book, mapping: { ...book.mapping, constants } }]);
    expect(findings).toEqual([]);
  });
});

describe("a dose that is 6 % off", () => {
  it("is noticed where % FFA is given in whole figures: 2 is no 1.5", () => {
    // 1383.2 g and 6 % of it
    const found = causes(weighed, [[2, 100, 0.9, 1466.2]]);
    expect(found.map(([row, , should]) => [row, should])).toEqual([[1, "1383.2"]]);
  });
});

describe("a hundredfold", () => {
  it("is named though it starts from a % FFA that is rounded in its cell", () => {
    // 0.4246 % of 50 kg are 212.3 g of acid, 42.24 g of KOH; a hundred times that and 388.9 g (55.6 L), 85 %
    // from 0.42 %: 41.78 g and 388.9 g, of 85 % 506.7 g
    expect(causes(weighed, [[0.42, 50, 0.9, 5426.7]])).toEqual([
      [1, "percent-as-fraction", "506.7"],
    ]);
  });
});

describe("litres taken for kilograms", () => {
  it("are named where the maker's density cancels in all other rows, so that nobody knows it", () => {
    // 1 mL of oil and 1 g/L of KOH: as many grams for the acid of a litre as mL without the blank
    const columns: Columns = [
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleVolume", "mL"],
      ["strength", "g/L"],
      ["titrantBase", undefined],
      ["oilAmount", "L"],
      ["acidDose", "g"],
    ];
    const row = (titre: number, litres: number, times = 1): LogbookValue[] => {
      const acid = round(((titre - 0.2) * litres * times) / 0.85, 0);
      return [titre, 0.2, 1, 1, "KOH", litres, acid];
    };
    // a litre of this maker's oil weighs 0.93 kg
    const rows = [
      row(4.2, 120),
      row(3.1, 97),
      row(5.6, 141),
      row(2.9, 60),
      row(4.9, 133, 1 / 0.93),
    ];
    // 4.7 g a litre, 625.1 g, of 85 % 735
    expect(causes(columns, rows)).toEqual([[5, "density-as-one", "735"]]);
  });
});
