/** The card of a batch on record: what is typed after it, and which row it is. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { cardUnits } from "../../../src/core/card/units";
import { isFault } from "../../../src/sheet/port";
import { alikeWords, amountsOf, batchWords, cardOf } from "../../../src/taskpane/card/card";
import { farFrom, weighedField, weighedKey } from "../../../src/taskpane/card/fields";
import { wentOf } from "../../../src/taskpane/card/went-of";
import { type RecordedBatch, readBatches } from "../../../src/workbook/planning/read-batches";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { hostWith } from "../../workbook/card/computed";
import { mixOf, slipwayBatch } from "../../workbook/record/batch-records";

async function batchesOf(host = openMemory(sampleLogbook())): Promise<readonly RecordedBatch[]> {
  const found = await readBatches(host);
  if (found === undefined || isFault(found)) throw new Error("no batches");
  return found.rows;
}

describe("how a batch went, as typed on its card", () => {
  it("is in the gallons of the card, and litres in its row; what was typed in one unit is not read in another", async () => {
    const batch = (await batchesOf()).find((each) => each.batch === "B-112");
    if (batch === undefined) throw new Error("no B-112");
    const typed = { "litres, US gal": "25,4" };
    const litres = (units: "us" | "metric" | "imperial") =>
      wentOf(batch, amountsOf(batch, units) ?? [], { ticks: [], typed }, units, ",")?.values.litres;
    expect(litres("us")).toBeCloseTo(25.4 * 3.785411784, 12);
    expect([litres("metric"), litres("imperial")]).toEqual([undefined, undefined]);
  });
});

describe("what was weighed of one lot of two", () => {
  const lots = mixOf(["SW-17", "60"], ["NQ-41", "40"]);
  const readBatch = async () => {
    const { host } = await hostWith({ ...slipwayBatch, lots });
    const batch = (await batchesOf(host)).find((each) => each.batch === slipwayBatch.batch);
    if (batch === undefined) throw new Error("no batch");
    return { batch, amounts: amountsOf(batch, "us") ?? [] };
  };

  it("is recorded with the other as worked out, which is said", async () => {
    const { batch, amounts } = await readBatch();
    const [first] = amounts.filter(({ weighs }) => weighs === "oil");
    if (first === undefined) throw new Error("no oil");
    // by hand: 60 L and 40 L at 0.915 kg/L; 16 US gal are 60.566588544 L
    const typed = { [weighedKey(first)]: "16" };
    const record = wentOf(batch, amounts, { ticks: [], typed }, "us", ".");
    expect(record?.values.oil).toBeCloseTo(60.566588544 * 0.915 + 36.6, 9);
    expect(record?.asWorkedOut).toEqual(["NQ-41"]);
  });

  it("is asked about at once where it is far from what was worked out, as litres in the place of gallons are", async () => {
    const { amounts } = await readBatch();
    const [first] = amounts.filter(({ weighs }) => weighs === "oil");
    if (first === undefined) throw new Error("no oil");
    expect(farFrom(first, exact("60"))).toBe(
      "60 US gal is far from the 15.85 US gal worked out. Check the unit.",
    );
    // half as much again as 60 L, and two thirds of it, are 23.8 and 10.6 US gal
    expect(farFrom(first, exact("23.8"))).toContain("far from");
    expect(farFrom(first, exact("10.5"))).toContain("far from");
    expect(["10.6", "15.85", "23.7"].map((text) => farFrom(first, exact(text)))).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("the box for what was weighed", () => {
  it("asks in the unit in large, and what is typed there as worked out goes back to the row as it stands", async () => {
    // by hand: an ounce is 28.349523125 g, a pound sixteen of them
    const grams = { g: 1, oz: 28.349523125, lb: 453.59237, kg: 1000 } as const;
    const kitchens = [exact("0.5"), exact("100"), exact("1000")];
    for (const amount of kitchens) {
      const { host } = await hostWith({ ...slipwayBatch, amount });
      const batch = (await batchesOf(host)).find((each) => each.batch === slipwayBatch.batch);
      if (batch === undefined) throw new Error("no batch");
      for (const units of cardUnits) {
        const amounts = amountsOf(batch, units) ?? [];
        const lye = amounts.at(-1);
        if (lye === undefined) throw new Error("no lye");
        for (const each of amounts) {
          const { unit } = weighedField(each);
          expect(each.figure).toMatch(new RegExp(` ${unit}\\b`));
          expect(farFrom(each, exact("100000"))).toMatch(
            new RegExp(`^100000 ${unit} is far.* ${unit} worked`),
          );
        }
        const worked = Number(batch.under("Catalyst g"));
        const isByGrams = units === "metric" || units.endsWith("grams");
        const unit = isByGrams ? "g" : worked < grams.lb ? "oz" : "lb";
        expect(weighedField(lye).unit).toBe(unit);
        const typed = { [weighedKey(lye)]: (worked / grams[unit]).toPrecision(12) };
        const went = wentOf(batch, amounts, { ticks: [], typed }, units, ".");
        expect(went?.values.weighed).toBeCloseTo(worked, 6);
      }
    }
  });
});

describe("two rows of Batches under one number", () => {
  it("have a card each, which says its row and that there is another", async () => {
    const { host } = await hostWith({ ...slipwayBatch, batch: "B-112", amount: exact("50") });
    const rows = (await batchesOf(host)).filter(({ batch }) => batch === "B-112");
    expect(rows.map(alikeWords)).toEqual([
      "This is row 10 of Batches. Another batch is called B-112 too: row 4.",
      "This is row 4 of Batches. Another batch is called B-112 too: row 10.",
    ]);
    expect(new Set(rows.map(cardOf)).size).toBe(2);
    expect(new Set(rows.map(batchWords)).size).toBe(2);
    expect((await batchesOf()).map(alikeWords)).toEqual(Array(6).fill(undefined));
  });
});
