/** The card of a batch on record: what is typed after it, and which row it is. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { cardUnits } from "../../../src/core/card/units";
import { isFault } from "../../../src/sheet/port";
import { alikeWords, amountsOf, batchWords, cardOf } from "../../../src/taskpane/card/card";
import { madeDoubt, trialDoubt, weighedDoubt } from "../../../src/taskpane/card/doubts";
import { draftFrom, heldOf, reduce } from "../../../src/taskpane/card/draft";
import {
  farFrom,
  madeBox,
  madeKey,
  washesField,
  weighedBox,
  weighedField,
  weighedKey,
} from "../../../src/taskpane/card/fields";
import { othersOf, typedIn } from "../../../src/taskpane/card/typed";
import { keysOf, wentOf, wrongIn } from "../../../src/taskpane/card/went-of";
import { judge } from "../../../src/taskpane/widgets/judged";
import { planWent } from "../../../src/workbook/planning/record/record-went";
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
  it("is in the gallons of the card, and litres in its row, whatever units are picked afterwards", async () => {
    const batch = (await batchesOf()).find((each) => each.batch === "B-112");
    if (batch === undefined) throw new Error("no B-112");
    const held = { ticks: [], typed: { "litres, US gal": "25,4" } };
    for (const units of ["us", "metric", "imperial"] as const) {
      const went = wentOf(batch, amountsOf(batch, units) ?? [], held, units, ",");
      expect(went?.values.litres).toBeCloseTo(25.4 * 3.785411784, 12);
    }
    // by hand: 25.4 x 3.785411784 = 96.149 L = 21.150 imperial gallons
    const shown = (["us", "metric", "imperial"] as const).map(
      (units) => typedIn(held, madeBox(units), ",").text,
    );
    expect(shown).toEqual(["25,4", "96,15", "21,15"]);
    const wrong = { ticks: [], typed: { litres: "a lot" } };
    expect(typedIn(wrong, madeBox("us"), ",").text).toBe("a lot");
  });

  it("is typed anew in the units that are picked now, and the figure in others goes", () => {
    const first = reduce(draftFrom(undefined), {
      do: "type",
      card: "B",
      field: "litres, US gal",
      text: "25",
    });
    const [box, field] = [madeBox("metric"), madeKey("metric")];
    const anew = reduce(first, {
      do: "type",
      card: "B",
      field,
      text: "96",
      insteadOf: othersOf(box),
    });
    expect(heldOf(anew, "B").typed).toEqual({ litres: "96" });
  });

  it("counts washes in whole numbers, and asks about a figure far from what was planned", async () => {
    expect(judge("2.5", washesField, ".")).toMatchObject({
      kind: "wrong",
      sentence: 'Number of washes: "2.5" is no whole number; type 1, 2, 3 and so on.',
    });
    const { host } = await hostWith(slipwayBatch);
    const batch = (await batchesOf(host)).find((each) => each.batch === slipwayBatch.batch);
    if (batch === undefined) throw new Error("no batch");
    const amounts = amountsOf(batch, "metric") ?? [];
    const record = (typed: Record<string, string>) =>
      wentOf(batch, amounts, { ticks: [], typed }, "metric", ".");
    // 1046 g of lye and 100 L of oil are planned
    const far = record({ "lye, g": "10460", litres: "500" });
    expect(far?.doubts).toEqual([
      "KOH, lot K-207: Planned 1046 g, you typed 10460 g: check the unit.",
      "Fuel made: 100.0 L of oil was planned, you typed 500.0 L of fuel: more than it can give. Check the unit; measure it settled and dried.",
    ]);
    if (far === undefined) throw new Error("nothing to record");
    const plan = await planWent(host, far);
    expect(plan).toMatchObject({ mustConfirm: [expect.any(String), expect.any(String)] });
    const near = record({ "lye, g": "1050", litres: "96" });
    expect(near?.doubts).toEqual([]);
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
    const far = (text: string) =>
      farFrom(
        first,
        typedIn({ ticks: [], typed: { [weighedKey(first)]: text } }, weighedBox(first), "."),
      );
    expect(far("60")).toBe("Planned 15.85 US gal, you typed 60 US gal: check the unit.");
    // half as much again as 60 L, and two thirds of it, are 23.8 and 10.6 US gal
    expect(far("23.8")).toContain("Planned 15.85 US gal, you typed");
    expect(far("10.5")).toContain("Planned 15.85 US gal, you typed");
    expect(["10.6", "15.85", "23.7"].map(far)).toEqual([undefined, undefined, undefined]);
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
          const { form, part } = each.scale;
          const planned = part.value.times(part.source.times).div(form.per).toNumber();
          const typed = String(Number((3 * planned).toPrecision(3)));
          const held = { ticks: [], typed: { [weighedKey(each)]: typed } };
          // in that unit whatever the card speaks in later, and to no more digits than were typed
          for (const later of cardUnits) {
            const all = amountsOf(batch, later) ?? [];
            const there = all.find(({ id }) => id === each.id);
            if (there === undefined) throw new Error("no such amount");
            expect(weighedDoubt(there, batch, all, held, ".")).toMatch(
              new RegExp(
                `^Planned [\\d.]{1,9} ${unit}, you typed ${typed} ${unit}: check the unit\\.$`,
              ),
            );
          }
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

describe("what is said at a box while it can still be put right", () => {
  const read = async (units: (typeof cardUnits)[number] = "metric") => {
    const { host } = await hostWith(slipwayBatch);
    const batch = (await batchesOf(host)).find((each) => each.batch === slipwayBatch.batch);
    if (batch === undefined) throw new Error("no batch");
    return { batch, amounts: amountsOf(batch, units) ?? [] };
  };
  const heldWith = (typed: Record<string, string>) => ({ ticks: [], typed });

  it("takes pounds and ounces as the card shows them, and the unit behind a figure", async () => {
    const { amounts, batch } = await read("us");
    const lye = amounts.at(-1);
    if (lye === undefined) throw new Error("no lye");
    expect(lye.figure).toMatch(/^2 lb \d/);
    // and the box says that it takes them
    expect(weighedField(lye).hint).toContain("3 lb 4 oz, 3 lb, 4.5 oz");
    // by hand: 38.4 ounces of 28.349523125 g; 2 lb of them are 32
    const grams = {
      "2 lb 6.4 oz": 1088.621688,
      "2 lb 6.4": 1088.621688,
      "2lb6.4oz": 1088.621688,
      "2 lb 6,4 oz": 1088.621688,
      "2.4 lb": 1088.621688,
      "38.4 oz": 1088.621688,
      "2 lb": 907.18474,
    };
    const box = weighedKey(lye);
    for (const [text, expected] of Object.entries(grams)) {
      const went = wentOf(batch, amounts, heldWith({ [box]: text }), "us", ".");
      expect([text, went?.values.weighed]).toEqual([text, expect.closeTo(expected, 5)]);
    }
    const kilograms = await read("us, grams");
    const inGrams = kilograms.amounts.at(-1);
    if (inGrams === undefined) throw new Error("no lye");
    const typed = heldWith({ [weighedKey(inGrams)]: "2 lb 6.4 oz" });
    const went = wentOf(kilograms.batch, kilograms.amounts, typed, "us, grams", ",");
    expect(went?.values.weighed).toBeCloseTo(1088.621688, 5);
  });

  it("refuses more ounces than a pound has, and names what must be right before it is recorded", async () => {
    const { amounts, batch } = await read("us");
    const lye = amounts.at(-1);
    if (lye === undefined) throw new Error("no lye");
    const held = heldWith({ [weighedKey(lye)]: "2 lb 64 oz", washes: "2.5", litres: "90" });
    expect(wentOf(batch, amounts, held, "us", ".")).toBeUndefined();
    expect(wrongIn(amounts, held, "us", ".")).toEqual([
      "KOH, lot K-207: what you put in",
      "Number of washes",
    ]);
  });

  it("says of lye a twentieth off that it is weighed again, before it goes in", async () => {
    const { amounts, batch } = await read();
    const lye = amounts.at(-1);
    if (lye === undefined) throw new Error("no lye");
    const said = (typed: Record<string, string>) =>
      weighedDoubt(lye, batch, amounts, heldWith(typed), ".");
    // 1046 g are worked out: a twentieth more is 1098.3 g, a twentieth less 993.7 g
    expect(said({ "lye, g": "1100" })).toBe(
      "1046 g was worked out, you typed 1100 g: 5 % more. Weigh again before it goes into the methanol.",
    );
    expect(said({ "lye, g": "950" })).toContain("9 % less. Weigh again");
    expect(said({ "lye, g": "1090" })).toBeUndefined();
    expect(said({ "lye, g": "1000" })).toBeUndefined();
    // in the pounds and ounces of the card, by hand: 1046 g are 36.897 ounces, and 42 are 13.8 % more
    const inPounds = await read("us");
    const [pound] = inPounds.amounts.slice(-1);
    if (pound === undefined) throw new Error("no lye");
    const more = heldWith({ [weighedKey(pound)]: "2 lb 10 oz" });
    expect(weighedDoubt(pound, inPounds.batch, inPounds.amounts, more, ".")).toContain(
      "2 lb 4.9 oz was worked out, you typed 2 lb 10 oz: 14 % more.",
    );
    // of a tenth less oil than planned, 941 g are right
    const oil = amounts[0];
    if (oil === undefined) throw new Error("no oil");
    expect(said({ [weighedKey(oil)]: "90", "lye, g": "941" })).toBeUndefined();
    expect(said({ [weighedKey(oil)]: "90", "lye, g": "1046" })).toContain(
      "g is right for the oil that went in, you typed 1046 g: 11 % more.",
    );
  });

  it("asks about more fuel than the oil can give, by what went in, and about oil in the trial", async () => {
    const { amounts, batch } = await read();
    const said = (typed: Record<string, string>) =>
      madeDoubt("metric", batch, amounts, heldWith(typed), ".");
    // 100 L of oil are planned
    expect(said({ litres: "111" })).toContain("100.0 L of oil was planned, you typed 111.0 L");
    expect(said({ litres: "109" })).toBeUndefined();
    const oil = amounts[0];
    if (oil === undefined) throw new Error("no oil");
    expect(said({ [weighedKey(oil)]: "90", litres: "100" })).toContain("90.00 L of oil went in");
    expect(trialDoubt("oil at the bottom")).toContain("Not done yet");
    expect(trialDoubt("clear")).toBeUndefined();
  });
});

describe("what the row says already", () => {
  it("is kept at a press, in whichever unit the other figure was typed, and nothing else is", async () => {
    const { host } = await hostWith(slipwayBatch);
    const batch = (await batchesOf(host)).find((each) => each.batch === slipwayBatch.batch);
    if (batch === undefined) throw new Error("no batch");
    const typed = {
      "lye, lb": "2.1",
      "methanol, US gal": "6",
      "litres, imperial gal": "20",
      minutes: "40",
      washes: "3",
      trial: "clear",
      seen: "Dark.",
    };
    const ids = ["weighed", "methanol", "litres", "minutes", "washes", "trial", "seen"];
    for (const units of cardUnits) {
      const amounts = amountsOf(batch, units) ?? [];
      for (const id of ids) {
        const gone = keysOf(id, amounts, units);
        const left = Object.fromEntries(
          Object.entries(typed).filter(([key]) => !gone.includes(key)),
        );
        const went = wentOf(batch, amounts, { ticks: [], typed: left }, units, ".");
        expect(Object.keys(went?.values ?? {})).toEqual(ids.filter((each) => each !== id));
      }
    }
  });
});

describe("two rows of Batches under one number", () => {
  it("have a card each, which says its row and that there is another", async () => {
    const { host } = await hostWith({ ...slipwayBatch, batch: "B-112", amount: exact("50") });
    const rows = (await batchesOf(host)).filter(({ batch }) => batch === "B-112");
    expect(rows.map(alikeWords)).toEqual([
      "This is row 11 of Batches. Another batch is called B-112 too: row 4.",
      "This is row 4 of Batches. Another batch is called B-112 too: row 11.",
    ]);
    expect(new Set(rows.map(cardOf)).size).toBe(2);
    expect(new Set(rows.map(batchWords)).size).toBe(2);
    expect((await batchesOf()).map(alikeWords)).toEqual(Array(7).fill(undefined));
  });
});
