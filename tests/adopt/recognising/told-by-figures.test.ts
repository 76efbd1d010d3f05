/** Columns whose headings tell too little: their sums, and the words in their cells, tell the rest. */
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { sheetOf } from "./sheet-of";

const rolesOf = (values: readonly (readonly LogbookValue[])[]): Record<string, string> =>
  Object.fromEntries(
    (recogniseSheet(sheetOf(values))[0]?.columns ?? []).map(({ heading, role }) => [heading, role]),
  );

/** 8 g for each litre; the acid takes 90, 310, 150, 420 and 200 g; a hand weighs 1 % more or less. */
const batches = [
  [100, 90, 800, 890, 895],
  [240, 310, 1920, 2230, 2215],
  [160, 150, 1280, 1430, 1440],
  [300, 420, 2400, 2820, 2800],
  [80, 200, 640, 840, 846],
];

describe("grams of lye that add up", () => {
  it("are the acid's part, the reaction's, the whole and what was weighed, whatever stands above them", () => {
    const headings = ["Oil (L)", "Lye one (g)", "Lye two (g)", "Lye three (g)", "Lye four (g)"];
    expect(rolesOf([headings, ...batches])).toEqual({
      "Oil (L)": "oilAmount",
      "Lye one (g)": "acidDose",
      "Lye two (g)": "reactionDose",
      "Lye three (g)": "catalyst",
      "Lye four (g)": "weighed",
    });
  });
});

describe("words in the cells", () => {
  const rows = (cells: readonly string[]): LogbookValue[][] =>
    cells.map((cell, at) => [`NQ${String(7 + 3 * at)}`, cell, 2.5 + at / 10, 0.1, 10]);
  const headings = ["Drum", "End point by", "Titre (mL)", "Blank (mL)", "Sample (g)"];

  it("make a column of indicators no column of names", () => {
    const cells = ["turmeric", "phenolphthalein", "turmeric", "turmeric"];
    expect(rolesOf([headings, ...rows(cells)])["End point by"]).toBe("indicator");
  });

  it("tell a blank without oil from a titre without its blank", () => {
    const own = ["Drum", "Indicator", "Titre (mL)", "Blank without oil (mL)", "Sample (g)"];
    const roles = rolesOf([own, ...rows(["turmeric", "turmeric", "turmeric", "turmeric"])]);
    expect(roles["Blank without oil (mL)"]).toBe("blank");
  });
});
