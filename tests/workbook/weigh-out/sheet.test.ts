import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { batchCautions } from "../../../src/core/batch/cautions";
import type { BookCell, BookSheet } from "../../../src/sheet/book";
import { planWeighOut } from "../../../src/workbook/planning/plan-weigh-out";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { computedBook, fourLots, slipwaySheet } from "./computed";

const sheetOf = async (record = slipwaySheet): Promise<BookSheet> => {
  const [sheet] = (await computedBook(record)).sheets;
  if (!sheet) throw new Error("no sheet");
  return sheet;
};
const rowOf = (sheet: BookSheet, words: string): readonly (BookCell | null)[] =>
  sheet.rows.find((row) => String(row[1]?.value ?? "").startsWith(words)) ?? [];
const figure = (sheet: BookSheet, words: string): number => Number(rowOf(sheet, words)[2]?.value);

/** By hand: see the sample's readings; SW-17 has 14.6/3 - 0.15 mL on 10.02 g, NQ-41 2.3 mL on 10 g. */
const slipway = (56.1 * 0.0998 * (14.6 / 3 - 0.15)) / 10.02;
const northQuay = (56.1 * 0.0998 * 2.3) / 10;
const mixed = 0.6 * slipway + 0.4 * northQuay;

describe("the sheet to print", () => {
  it("works its amounts out from the lots by live formulas", async () => {
    const sheet = await sheetOf();
    expect(figure(sheet, "Acid value of the batch")).toBeCloseTo(mixed, 12);
    expect(figure(sheet, "Oil, lot SW-17")).toBeCloseTo(91.5 * 0.6, 12);
    expect(figure(sheet, "Oil, lot NQ-41")).toBeCloseTo(91.5 * 0.4, 12);
    expect(figure(sheet, "KOH, lot K-207")).toBeCloseTo(
      (91.5 * ((mixed / 56.1) * 56.1053 + 7.65)) / 0.9,
      9,
    );
    const acid = ((mixed / 56.1) * 282.468) / 1000;
    const methanol = (91.5 * (1 - acid) * 6 * 32.042) / 867.53 / 0.7914;
    expect(figure(sheet, "Methanol")).toBeCloseTo(methanol, 9);
    // By hand: the share of NQ-41 that brings the mix to 1 % FFA, AV 561/282.
    const share = (561 / 282 - slipway) / (northQuay - slipway);
    expect(figure(sheet, "For 1 % FFA, of lot NQ-41")).toBeCloseTo(100 * share, 9);
    expect(figure(sheet, "Allowed acid")).toBe(5);
  });

  it("says so once its acid value is not what it was when the sheet was made", async () => {
    const flag = (sheet: BookSheet) => sheet.rows[3]?.[1]?.value;
    expect(flag(await sheetOf())).toBe("");
    const older = await sheetOf({ ...slipwaySheet, acidValue: exact("1.2903") });
    expect(flag(older)).toBe(
      "The acid value is no longer 1.29: make this sheet anew before anything is weighed.",
    );
  });

  it("says so once a titration of it is worth another word than when the sheet was made", async () => {
    const flag = (sheet: BookSheet) => sheet.rows[3]?.[1]?.value;
    const lots = slipwaySheet.lots.map((each) => ({
      ...each,
      worth: each.lot === "NQ-41" ? "Usable: Its ± is not known yet." : each.worth,
    }));
    expect(flag(await sheetOf({ ...slipwaySheet, lots }))).toBe(
      "What the titration is worth has changed: make this sheet anew before anything is weighed.",
    );
    // a table made before that column has no word
    const wordless = slipwaySheet.lots.map((each) => ({ ...each, worth: "" }));
    expect(flag(await sheetOf({ ...slipwaySheet, lots: wordless }))).toBe("");
  });

  it("is right for one lot and for four, and for a titrant taken as pure", async () => {
    const one = { ...slipwaySheet, lots: [{ lot: "SW-17", percent: exact("100"), worth: "Good" }] };
    const single = await sheetOf({ ...one, target: undefined });
    expect(figure(single, "Acid value of the batch")).toBeCloseTo(slipway, 12);
    expect(figure(await sheetOf(fourLots), "Oil, lot SW-18")).toBeCloseTo(91.5 / 4, 12);
    const batch = { ...slipwaySheet.batch, isTitrantAsIfPure: true };
    const asIfPure = await sheetOf({ ...slipwaySheet, batch });
    expect(figure(asIfPure, "Acid value of the batch")).toBeCloseTo(0.9 * mixed, 12);
  });

  it("takes off the methanol of a methoxide solution, and says that less is to be added", async () => {
    const batch = {
      ...slipwaySheet.batch,
      base: "NaOCH3",
      assay: exact("30"),
      charge: exact("0.5"),
    } as const;
    const sheet = await sheetOf({ ...slipwaySheet, batch });
    const acid = ((mixed / 56.1) * 282.468) / 1000;
    const all = (91.5 * (1 - acid) * 6 * 32.042) / 867.53 / 0.7914;
    const lye = figure(sheet, "NaOCH3, lot K-207");
    expect(figure(sheet, "Methanol to add")).toBeCloseTo(all - (lye * 0.7) / 791.4, 9);
  });

  it("has a box for each amount, every caution, and lines for names and dates", async () => {
    const { rows } = await sheetOf();
    const words = rows.map((row) => row.map((cell) => String(cell?.value ?? "")).join(" "));
    expect(rows.filter(([first]) => first?.value === "☐")).toHaveLength(4);
    const text = words.map((line) => line.replace(/^!?\s+/, "")).join(" ");
    const flat = text.replace(/ ! /g, " ").replace(/\s+/g, " ");
    for (const caution of batchCautions) expect(flat).toContain(caution);
    expect(text).toMatch(/Weighed by _+.*Date _+/);
    expect(text).not.toMatch(/\bsafe\b/i);
  });

  it("is planned under a name that a sheet may have, and no other sheet has", async () => {
    const host = openMemory(sampleLogbook());
    const batch = { ...slipwaySheet.batch, batch: "B/118: [x]" };
    const plan = await planWeighOut(host, { ...slipwaySheet, batch });
    expect(plan).toMatchObject({ kind: "plan", block: { sheet: "Weigh-out B 118 x" } });
    expect(plan.kind === "plan" && plan.steps.map((step) => step.do)).toContain("print-area");
  });
});
