import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import type { MemoryHost } from "../../host/memory";
import type { Book } from "../../../src/sheet/book";
import type { RecordOutcome } from "../../../src/workbook/planning/plan";
import { titrations } from "../../../src/workbook/tables/titrations";
import { readLots } from "../../../src/workbook/planning/read-lots";
import { planBatch, recordBatch } from "../../../src/workbook/planning/record/record-batch";
import {
  planTitration,
  recordTitration,
} from "../../../src/workbook/planning/record/record-titration";
import type { BatchRecord } from "../../../src/workbook/record/batch-record";
import type { TitrationRecord } from "../../../src/workbook/record/titration-record";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { cells } from "../../host/contract-parts";
import { openMemory } from "../../host/open-memory";
import { only, slipwayBatch } from "../record/batch-records";
import { fryerLot } from "../record/records";

async function recorded(host: MemoryHost, record: BatchRecord): Promise<RecordOutcome> {
  const plan = await planBatch(host, record);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm } = plan;
  return recordBatch(host, record, { fingerprint, agreed: mustConfirm });
}

async function titrated(host: MemoryHost, record: TitrationRecord): Promise<void> {
  const plan = await planTitration(host, record);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm } = plan;
  const outcome = await recordTitration(host, record, { fingerprint, agreed: mustConfirm });
  expect(outcome.kind).toBe("recorded");
}

async function resultsOf(record: Partial<BatchRecord>, host = openMemory(sampleLogbook())) {
  const outcome = await recorded(host, { ...slipwayBatch, ...record });
  if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
  expect(outcome.differences).toEqual([]);
  return outcome.results;
}

/** By hand: mean titre 14.6/3, less 0.15, is 4.716666... mL; 56.1 x 0.0998 x that / 10.02 g. */
const slipway = (56.1 * 0.0998 * (14.6 / 3 - 0.15)) / 10.02;
/** By hand: NQ-41 has 2.45 - 0.15 = 2.3 mL on 10 g. */

const noBatches = (): Book => {
  const book = sampleLogbook();
  return { ...book, sheets: book.sheets.filter(({ name }) => name !== "Batches") };
};

describe("recording a batch", () => {
  it("adds a row whose acid value is the lot's own, by reference, and whose amounts are formulas", async () => {
    const host = openMemory(sampleLogbook());
    const results = await resultsOf({}, host);
    expect(results["Acid value mg KOH/g"]).toBeCloseTo(slipway, 12);
    expect(results["Oil kg"]).toBeCloseTo(91.5, 12);
    // By hand: 91.5 x (AV / 56.1 x 56.1053 + 7.65) / 0.9.
    expect(results["Catalyst g"]).toBeCloseTo(
      (91.5 * ((slipway / 56.1) * 56.1053 + 7.65)) / 0.9,
      9,
    );
    expect(host.undoLabels).toEqual(["Record batch B-118"]);
  });

  it("follows when a reading is put right", async () => {
    const host = openMemory(sampleLogbook());
    const outcome = await recorded(host, slipwayBatch);
    if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
    const titreColumn = titrations.columns.findIndex(({ heading }) => heading === "Titre 1 mL");
    host.change(({ sheets }) => {
      const titre = sheets.find(({ name }) => name === "Titrations")?.cells[`4,${titreColumn}`];
      expect(titre?.value).toBe(4.85);
      if (titre) titre.value = 5.15;
    });
    const now = await cells(host, outcome.plan.block);
    // By hand: the mean titre is now 14.9/3.
    expect(now.values[0]?.[6]).toBeCloseTo((56.1 * 0.0998 * (14.9 / 3 - 0.15)) / 10.02, 12);
  });

  it("gives no dose of readings that are apart, until the row's note says that they are used", async () => {
    // SW-18 has a titre far from the others; by hand: mean 21.75/4 less 0.15 mL on 10 g
    const acid = (56.1 * 0.0998 * (21.75 / 4 - 0.15)) / 10;
    const held = await resultsOf({ lots: only("SW-18") });
    expect(held["Acid value mg KOH/g"]).toBeCloseTo(acid, 12);
    expect(held["Catalyst g"]).toBe("Not yet: see Acid value worth");
    expect(held["± catalyst g"]).toBe("");
    const used = await resultsOf({
      lots: only("SW-18"),
      note: "Dark. Used all the same: lot SW-18: ...",
    });
    expect(used["Catalyst g"]).toBeCloseTo((91.5 * ((acid / 56.1) * 56.1053 + 7.65)) / 0.9, 9);
  });

  /** By hand: the mean of 2.4, 2.45 and 2.4, less 0.125, on 5.02 g of 0.1 mol/L. */
  const again = (56.1 * 0.1 * (7.25 / 3 - 0.125)) / 5.02;

  it.each([
    ["on a later day leaves it as it was", slipwayBatch.date + 1, slipway],
    ["on its own day counts", slipwayBatch.date, again],
    ["on its own day, an hour written with it, counts", slipwayBatch.date + 0.6, again],
  ])("of a lot titrated again %s", async (_, date, expected) => {
    const host = openMemory(sampleLogbook());
    const outcome = await recorded(host, slipwayBatch);
    if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
    await titrated(host, { ...fryerLot, lot: "SW-17", date });
    const now = await cells(host, outcome.plan.block);
    expect(now.values[0]?.[6]).toBeCloseTo(expected, 12);
  });

  it("is named, and agreed to, before its lot is titrated again on that day", async () => {
    const host = openMemory(sampleLogbook());
    await recorded(host, slipwayBatch);
    const asked = async (lot: string, date: number): Promise<string[]> => {
      const plan = await planTitration(host, { ...fryerLot, lot, date });
      return plan.kind === "plan" ? plan.remarks.map(({ sentence }) => sentence) : [];
    };
    // the sample's B-113 of 4 September is of that lot too
    expect(await asked("SW-17", slipwayBatch.date)).toEqual([
      "Batch B-118 of that day or later goes by the last titration of lot SW-17: amounts there will follow this one.",
    ]);
    expect((await asked("sw-17", 46_200))[0]).toMatch(/^Batches B-113, B-118 of that day/);
    expect(await asked("SW-17", slipwayBatch.date + 1)).toEqual([]);
    expect(await asked("NEW-1", 46_200)).toEqual([]);
  });

  it("follows the lot's last row where the batch has no day", async () => {
    const host = openMemory(sampleLogbook());
    const outcome = await recorded(host, slipwayBatch);
    if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
    await titrated(host, { ...fryerLot, lot: "SW-17", date: slipwayBatch.date + 1 });
    const { row } = outcome.plan.block;
    host.change(({ sheets }) => {
      const day = sheets.find(({ name }) => name === "Batches")?.cells[`${String(row)},0`];
      expect(day?.value).toBe(slipwayBatch.date);
      if (day) day.value = "Thursday";
    });
    const now = await cells(host, outcome.plan.block);
    expect(now.values[0]?.[6]).toBeCloseTo(again, 12);
  });

  it("offers a lot whose titration is yet to come without an acid value, and says why", async () => {
    const host = openMemory(sampleLogbook());
    const until = slipwayBatch.date;
    await titrated(host, { ...fryerLot, lot: "SW-17", date: until + 1 });
    await titrated(host, { ...fryerLot, lot: "NEW-1", date: until + 1 });
    const lots = await readLots(host, until);
    if (lots === undefined || "code" in lots) throw new Error("no lots");
    expect(lots.find(({ lot }) => lot === "SW-17")?.acidValue).toBeCloseTo(slipway, 12);
    expect(lots.find(({ lot }) => lot === "NEW-1")).toMatchObject({
      acidValue: undefined,
      trouble: "its titration is dated on a day yet to come",
    });
  });

  it("makes the table with its first row where there is none, and undo takes it away whole", async () => {
    const host = openMemory(noBatches());
    const before = host.book;
    const results = await resultsOf({}, host);
    expect(results["Acid value mg KOH/g"]).toBeCloseTo(slipway, 12);
    expect(host.book.tables.map(({ name }) => name)).toContain("Batches");
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("writes its own formulas into the first row of an empty table, though they name another table", async () => {
    const host = openMemory(noBatches());
    await recorded(host, slipwayBatch);
    host.change(({ sheets }) => {
      const typed = sheets.find(({ name }) => name === "Batches")?.cells ?? {};
      for (const place of Object.keys(typed)) {
        if (Number(place.split(",")[0]) >= 3) Reflect.deleteProperty(typed, place);
      }
    });
    const results = await resultsOf({}, host);
    expect(results["Catalyst g"]).toBeTypeOf("number");
  });

  it("takes the assay into an acid value worked out as if the titrant's lye were pure", async () => {
    const results = await resultsOf({ isTitrantAsIfPure: true });
    expect(results["Acid value mg KOH/g"]).toBeCloseTo(0.9 * slipway, 12);
    // The acid part as weighed knows no assay: 91.5 x (AV as if pure) / 56.1 x 56.1053.
    expect(results["Catalyst g"]).toBeCloseTo(
      91.5 * ((slipway / 56.1) * 56.1053) + (91.5 * 7.65) / 0.9,
      9,
    );
  });

  it("gives no dose above the limit, and one once a higher limit is typed", async () => {
    // By hand: TW-09 has 7.8 mL on 2.51 g: AV 17.399, FFA 8.746 %.
    const refused = await resultsOf({ lots: only("TW-09") });
    expect(refused["Catalyst g"]).toEqual({ error: "#VALUE!" });
    const given = await resultsOf({ lots: only("TW-09"), limitFfa: exact("9") });
    expect(given["Catalyst g"]).toBeTypeOf("number");
  });

  it("corrects a volume that was taken hot, and takes the methanol ratio", async () => {
    const results = await resultsOf({ temperature: exact("45"), ratio: exact("5") });
    // By hand: used cooking oil has 0.915 - 0.00066 x 25 = 0.8985 kg/L at 45 C.
    expect(results["Oil kg"]).toBeCloseTo(89.85, 12);
    const acid = ((slipway / 56.1) * 282.468) / 1000;
    expect(results["Methanol L"]).toBeCloseTo(
      (89.85 * (1 - acid) * 5 * 32.042) / 867.53 / 0.7914,
      9,
    );
    expect(results["Methanol to add L"]).toEqual(results["Methanol L"]);
  });

  it("takes off the methanol that a methoxide solution brings", async () => {
    const results = await resultsOf({
      base: "NaOCH3",
      assay: exact("30"),
      charge: exact("0.5"),
    });
    const brought = (Number(results["Catalyst g"]) * 0.7) / 791.4;
    expect(results["Methanol to add L"]).toBeCloseTo(Number(results["Methanol L"]) - brought, 9);
    const lye = await resultsOf({ base: "KOH", assay: exact("45") });
    expect(lye["Methanol to add L"]).toEqual(lye["Methanol L"]);
  });

  it("names the water in its route, and says when it was not measured", async () => {
    // Ma 1998: above 0.06 % a base batch suffers.
    const routeWith = async (water: string): Promise<unknown> =>
      (await resultsOf({ water: water === "" ? undefined : exact(water) })).Route;
    expect(await routeWith("")).toMatch(/; water not measured\.$/);
    expect(await routeWith("0.06")).toMatch(/; water 0\.06 % is low enough\.$/);
    expect(await routeWith("0.09")).toMatch(
      /; water 0\.09 % is above 0\.06 %: dry the oil first\.$/,
    );
  });

  it("asks first when water was measured and the table, an older one, has no column for it", async () => {
    const older = async (water: BatchRecord["water"]) => {
      const host = openMemory(sampleLogbook());
      host.change(({ sheets, tables }) => {
        const block = tables.find(({ name }) => name === "Batches")?.block;
        const found = sheets.find(({ name }) => name === "Batches");
        if (!block || !found) throw new Error("no batches");
        const heading = Object.values(found.cells).find((cell) => cell.value === "Water %");
        expect(heading).toBeDefined();
        if (heading) heading.value = "Seal no.";
      });
      const plan = await planBatch(host, { ...slipwayBatch, water });
      return plan.kind === "plan" ? plan.mustConfirm : plan;
    };
    expect(await older(undefined)).toEqual([]);
    expect(await older(exact("0.05"))).toEqual(["column-missing"]);
  });

  it("says when the same batch is there already", async () => {
    const host = openMemory(sampleLogbook());
    await recorded(host, slipwayBatch);
    const plan = await planBatch(host, slipwayBatch);
    expect(plan).toMatchObject({ mustConfirm: ["recorded-before"] });
    expect(plan.kind === "plan" && plan.remarks[0]?.sentence).toContain("already holds this batch");
  });
});

describe("the lots on record", () => {
  it("are read with the latest first, each with what its last row shows", async () => {
    const lots = await readLots(openMemory(sampleLogbook()));
    if (!Array.isArray(lots)) throw new Error("no lots");
    expect(lots.map(({ lot }) => String(lot))).toEqual([
      ...["SW-19", "BL-03", "NQ-43", "TW-09", "SW-18", "NQ-42", "TW-08", "SW-17", "NQ-41"],
    ]);
    expect(lots[0]).toMatchObject({ acidValue: undefined, trouble: "#N/A" });
    expect(lots[7]).toMatchObject({
      lot: "SW-17",
      oil: "used cooking oil",
      titrantBase: "KOH",
    });
    expect(lots[7]?.acidValue).toBeCloseTo(slipway, 12);
    expect(lots[7]?.halfWidth).toBeGreaterThan(0);
  });

  it("are none where there is no table of titrations", async () => {
    expect(await readLots(openMemory())).toBeUndefined();
  });
});
