/** Gallons that no nation owns are asked about once, for all columns that are in them. */
import { describe, expect, it } from "vitest";
import { lacks } from "../../../src/adopt/recognising/lacks";
import { partedColumns } from "../../../src/taskpane/logbook/needs-you";
import { inGallons, madeOf, measuresOf } from "../../../src/taskpane/logbook/whose-gallons";
import { Pane, sheetOf } from "./typed-pane";

const paneOf = (oil: string, methanol: string): Pane =>
  new Pane(
    sheetOf(
      [
        ["Date", "Jug", "Titration mL", oil, "NaOH (g)", methanol],
        [46_000, "J4", 2.1, 40, 1075, 8],
        [46_009, "J5", 3.4, 44, 1272, 9],
        [46_021, "J6", 1.9, 38, 1045, 7.5],
        [46_030, "J7", 2.8, 52, 1300, 10.5],
      ],
      ["yyyy-mm-dd"],
    ),
  );

const asksGallons = ({ table }: Pane): readonly string[] =>
  lacks(table.mapping, table.cells)
    .map(({ sentence }) => sentence)
    .filter((sentence) => sentence.includes("US or imperial"));

const unitsOf = ({ table }: Pane): readonly (string | undefined)[] =>
  table.mapping.columns.flatMap(({ role, unit }) =>
    role === "oilAmount" || role === "methanol" ? [unit] : [],
  );

describe("gallons of nobody's", () => {
  it("are one question, and no column to look at", () => {
    const pane = paneOf("Oil (gal)", "Methanol (gal)");
    expect(asksGallons(pane)).toHaveLength(1);
    expect(measuresOf(inGallons(pane.table))).toEqual(["gal"]);
    const { toLook } = partedColumns(pane.table);
    expect(toLook.map(({ role }) => role)).not.toContain("oilAmount");
  });

  it("are all of one nation once it is picked, and of the other when it is picked instead", () => {
    const pane = paneOf("Oil (gal)", "Methanol (gal)");
    const imperial = pane.act(...madeOf(inGallons(pane.table), "imp"));
    expect(unitsOf(imperial)).toEqual(["imp gal", "imp gal"]);
    expect(asksGallons(imperial)).toEqual([]);
    const american = imperial.act(...madeOf(inGallons(imperial.table), "US"));
    expect(unitsOf(american)).toEqual(["US gal", "US gal"]);
  });

  it("are not asked about where another column names them", () => {
    expect(inGallons(paneOf("Oil (gal)", "Methanol (US gal)").table)).toEqual([]);
  });
});
