/** The bench card to print: its figures are those of the row, in the person's unit. */
import { describe, expect, it } from "vitest";
import { batchCautions } from "../../../src/core/batch/cautions";
import { cardSteps, cardTroubles } from "../../../src/core/card/steps";
import type { BookSheet } from "../../../src/sheet/book";
import { planCard } from "../../../src/workbook/planning/plan-card";
import { exact } from "../../../src/core/exact/exact";
import { mixOf, slipwayBatch } from "../record/batch-records";
import { cardOf, hostWith } from "./computed";

/** By hand: see the sample's readings; SW-17 has 14.6/3 - 0.15 mL on 10.02 g, NQ-41 2.3 mL on 10 g. */
const slipway = (56.1 * 0.0998 * (14.6 / 3 - 0.15)) / 10.02;
const northQuay = (56.1 * 0.0998 * 2.3) / 10;
const mixed = 0.6 * slipway + 0.4 * northQuay;
const lye = (91.5 * ((mixed / 56.1) * 56.1053 + 7.65)) / 0.9;
const methanol = (91.5 * (1 - ((mixed / 56.1) * 282.468) / 1000) * 6 * 32.042) / 867.53 / 0.7914;

const twoLots = { ...slipwayBatch, lots: mixOf(["SW-17", "60"], ["NQ-41", "40"]) };

const rowAt = ({ rows }: BookSheet, words: string): number =>
  rows.findIndex((row) => String(row[1]?.value ?? "").startsWith(words));
const figure = (sheet: BookSheet, words: string): number =>
  Number(sheet.rows[rowAt(sheet, words)]?.[2]?.value);
/** What stands in small under an amount. */
const also = (sheet: BookSheet, words: string) =>
  (sheet.rows[rowAt(sheet, words) + 1] ?? []).flatMap((cell) => cell?.value ?? []);

describe("the bench card to print", () => {
  it("shows litres, kilograms and grams as the rows of the batch have them", async () => {
    const sheet = await cardOf(twoLots, "metric");
    expect(figure(sheet, "Oil, lot SW-17")).toBeCloseTo(60, 9);
    expect(also(sheet, "Oil, lot NQ-41")).toEqual([expect.closeTo(91.5 * 0.4, 9)]);
    expect(figure(sheet, "Methanol")).toBeCloseTo(methanol, 9);
    expect(figure(sheet, "KOH, lot K-207")).toBeCloseTo(lye, 9);
    expect(figure(sheet, "Acid value of the oil")).toBeCloseTo(mixed, 9);
  });

  it("shows gallons of that country, and pounds and ounces to a tenth", async () => {
    const us = await cardOf(twoLots, "us");
    expect(figure(us, "Oil, lot SW-17")).toBeCloseTo(60 / 3.785411784, 9);
    // by hand: 54.9 kg are 1936.54 oz: 121 lb and 0.5 oz
    const small = [60, 121, 0.5, 54.9];
    expect(also(us, "Oil, lot SW-17")).toEqual(small.map((each) => expect.closeTo(each, 9)));
    const ounces = lye / 28.349523125;
    const pounds = Math.floor(ounces / 16);
    const over = Number((ounces - 16 * pounds).toFixed(1));
    expect(us.rows[rowAt(us, "KOH, lot K-207")]?.slice(2, 4)).toMatchObject([
      { value: pounds, format: '0" lb"', style: "large" },
      { value: expect.closeTo(over, 9), format: '0.0" oz"' },
    ]);
    const imperial = await cardOf(twoLots, "imperial");
    expect(figure(imperial, "Methanol")).toBeCloseTo(methanol / 4.54609, 9);
  });

  it("says what is to be added beside a methoxide solution", async () => {
    const solution = { base: "NaOCH3", assay: exact("30"), charge: exact("0.5") } as const;
    const sheet = await cardOf({ ...slipwayBatch, ...solution }, "metric");
    const all = (91.5 * (1 - ((slipway / 56.1) * 282.468) / 1000) * 6 * 32.042) / 867.53 / 0.7914;
    const grams = figure(sheet, "NaOCH3, lot K-207");
    expect(figure(sheet, "Methanol to add")).toBeCloseTo(all - (grams * 0.7) / 791.4, 9);
  });

  it("has a box and a caution for each step in its order, what to do when it goes wrong, and all cautions behind", async () => {
    const { rows, print } = await cardOf(slipwayBatch, "metric");
    expect(rows.filter(([first]) => first?.value === "☐")).toHaveLength(cardSteps.length);
    const words = rows.map((row) => row.map((cell) => String(cell?.value ?? "")).join(" "));
    const flat = (lines: readonly string[]): string =>
      lines
        .map((line) => line.replace(/^\s*(?:[☐!]\s+)?/, ""))
        .join(" ")
        .replace(/\s+/g, " ");
    const card = flat(words.slice(0, print?.secondPage));
    for (const { words: step, caution } of cardSteps) {
      // beside the words stands how warm and how long
      expect(card).toContain(step.split(" ").slice(0, 5).join(" "));
      expect(card).toContain(caution);
    }
    for (const { seen, act } of cardTroubles) expect(card).toContain(`${seen} ${act}`);
    const behind = flat(words.slice(print?.secondPage));
    for (const caution of batchCautions) expect(behind).toContain(caution);
    expect(flat(words)).not.toMatch(/\bsafe\b/i);
  });

  it("has a place on paper for each thing the trial may show, as the pane asks it, and none is cut off", async () => {
    const { rows } = await cardOf(slipwayBatch, "metric");
    const trial = rows.find((row) =>
      String(row[1]?.value ?? "").startsWith("Methanol trial: 3 mL of fuel"),
    );
    const places = String(trial?.[2]?.value ?? "");
    for (const seen of ["☐ clear", "☐ cloudy", "☐ oil at the bottom"])
      expect(places).toContain(seen);
    // a text beside which the next cell is filled is cut off at its column's edge: 52 letters wide
    const beside = rows.filter((row) => row[1] && row[2] && row[1].style === undefined);
    for (const row of beside) expect(String(row[1]?.value).length).toBeLessThanOrEqual(52);
  });

  it("is planned under a name that a sheet may have, and not for rows it cannot tell apart", async () => {
    const odd = { ...slipwayBatch, batch: "B/118: [x]" };
    const { host, rowOf } = await hostWith(odd);
    const asked = { row: await rowOf(odd.batch), batch: odd.batch, units: "us" } as const;
    expect(await planCard(host, asked)).toMatchObject({ block: { sheet: "Card B 118 x" } });
    expect(await planCard(host, { ...asked, row: asked.row - 1 })).toMatchObject({
      sentence: "The rows of Batches have moved: look again.",
    });
    const again = await hostWith({ ...slipwayBatch, batch: "B-112", date: 46_268 });
    const twice = await planCard(again.host, { row: 4, batch: "B-112", units: "us" });
    expect(twice).toMatchObject({ sentence: expect.stringMatching(/^Rows \d+ and 4 of Batches/) });
  });
});
