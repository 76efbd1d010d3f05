/** Batches of several lots: a row of `Batches` and rows of `Blends`, in one write. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import type { Book } from "../../../src/sheet/book";
import { fault } from "../../../src/sheet/port";
import { readBatches } from "../../../src/workbook/planning/read-batches";
import { planBatch, recordBatch } from "../../../src/workbook/planning/record/record-batch";
import type { BatchRecord } from "../../../src/workbook/record/batch-record";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { batchesAlone } from "../../../src/workbook/tables/batches";
import { tableSheet } from "../../../src/workbook/tables/sheet";
import type { MemoryHost } from "../../host/memory";
import { openMemory } from "../../host/open-memory";
import { mixOf, slipwayBatch } from "../record/batch-records";

/** By hand, of the sample: SW-17 has 14.6/3 - 0.15 mL on 10.02 g, NQ-41 2.3 mL on 10 g, NQ-42 2.5 - 0.15 on 10.01. */
const slipway = (56.1 * 0.0998 * (14.6 / 3 - 0.15)) / 10.02;
const northQuay = (56.1 * 0.0998 * 2.3) / 10;

async function recorded(host: MemoryHost, record: BatchRecord) {
  const plan = await planBatch(host, record);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm } = plan;
  const outcome = await recordBatch(host, record, { fingerprint, agreed: mustConfirm });
  if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
  expect(outcome.differences).toEqual([]);
  return outcome;
}

const without = (...names: string[]): Book => {
  const sample = sampleLogbook();
  return { ...sample, sheets: sample.sheets.filter(({ name }) => !names.includes(name)) };
};

const three: BatchRecord = {
  ...slipwayBatch,
  lots: mixOf(["SW-17", "50"], ["NQ-41", "30"], ["BL-03", "20"]),
};

describe("a batch of several lots", () => {
  it("has its acid value from the rows of Blends, each lot by its mass", async () => {
    const host = openMemory(sampleLogbook());
    const two = { ...slipwayBatch, lots: mixOf(["SW-17", "60"], ["NQ-41", "40"]) };
    const { results, plan } = await recorded(host, two);
    const mixed = 0.6 * slipway + 0.4 * northQuay;
    expect(results["Acid value mg KOH/g"]).toBeCloseTo(mixed, 12);
    expect(results["Oil kg"]).toBeCloseTo(91.5, 10);
    expect(results["Catalyst g"]).toBeCloseTo((91.5 * ((mixed / 56.1) * 56.1053 + 7.65)) / 0.9, 9);
    expect(plan.cells.filter(({ block }) => block.sheet === "Blends").length).toBeGreaterThan(10);
    const found = await readBatches(host);
    if (found === undefined || "code" in found) throw new Error("no batches");
    expect(found.rows[0]?.oils).toMatchObject([
      { lot: "SW-17", amount: { value: 60, unit: "l" }, from: "Blends" },
      { lot: "NQ-41", amount: { value: 40, unit: "l" }, from: "Blends" },
    ]);
  });

  it("stands in the sample as well: two kitchens' lots, and the acid value that their titrations come to", async () => {
    const found = await readBatches(openMemory(sampleLogbook()));
    if (found === undefined || "code" in found) throw new Error("no batches");
    const blend = found.rows.find(({ batch }) => batch === "B-121");
    // by hand: TW-08 has 10.85/3 - 0.15 mL on 2.5 g; 60 L and 20 L of one density
    const tidewheel = (56.1 * 0.0998 * (10.85 / 3 - 0.15)) / 2.5;
    expect(blend?.under("Acid value mg KOH/g")).toBeCloseTo(
      0.75 * tidewheel + 0.25 * northQuay,
      12,
    );
    expect(blend?.under("Oil kg")).toBeCloseTo(80 * 0.915, 10);
    expect(Number(blend?.under("± acid value mg KOH/g"))).toBeGreaterThan(0);
    expect(blend?.oils.map(({ lot }) => lot)).toEqual(["TW-08", "NQ-41"]);
    expect(String(blend?.under("Acid value worth"))).not.toMatch(/^Not yet/);
  });

  it("has its ± by the law of propagation, from the lots' own and what titrant and burette share", async () => {
    const host = openMemory(sampleLogbook());
    const { results } = await recorded(host, three);
    const half = results["± acid value mg KOH/g"];
    const blends = host.book.sheets.find(({ name }) => name === "Blends");
    expect(half).toBeTypeOf("number");
    expect(blends).toBeDefined();
    // the sample's titrant is ± 0.5 %: of each lot 1.959964 x 0.5 / sqrt(3) % of its acid is shared
    const av = Number(results["Acid value mg KOH/g"]);
    const shared = (av * 1.959963984540054 * 0.5) / Math.sqrt(3) / 100;
    expect(Number(half)).toBeGreaterThan(shared);
    expect(Number(half)).toBeLessThan(0.2 * av);
  });

  it("is never called read back when either of its two sheets could not be read", async () => {
    const ask = async (host: MemoryHost) => {
      const plan = await planBatch(host, three);
      if (plan.kind !== "plan") throw new Error(plan.sentence);
      return { fingerprint: plan.fingerprint, agreed: plan.mustConfirm };
    };
    /** Reads of each sheet once it was written; the sheet told of is not answered. */
    const outcomeWithout = async (lost: number) => {
      const host = openMemory(sampleLogbook());
      const confirmed = await ask(host);
      let isWritten = false;
      let reads = 0;
      host.interference = ({ verb, moment }) => {
        if (verb === "write" && moment === "after") isWritten = true;
        if (!isWritten || verb !== "read" || moment !== "before") return undefined;
        reads += 1;
        return reads >= lost ? fault("failed") : undefined;
      };
      return { outcome: await recordBatch(host, three, confirmed), reads: () => reads };
    };
    const all = await outcomeWithout(Infinity);
    expect(all.outcome).toMatchObject({ kind: "recorded", isReadBack: true, differences: [] });
    expect(all.reads()).toBeGreaterThan(1);
    for (let lost = 1; lost <= all.reads(); lost += 1) {
      const { outcome } = await outcomeWithout(lost);
      expect(outcome, String(lost)).toMatchObject({ kind: "recorded", isReadBack: false });
      expect("sentence" in outcome && outcome.sentence).toContain("could not be read back");
    }
  });

  it("is one undo, and is not written beside lots of the same number", async () => {
    const host = openMemory(sampleLogbook());
    const before = host.book;
    await recorded(host, three);
    const again = await planBatch(host, three);
    expect(again).toMatchObject({ kind: "refused" });
    expect(again.kind === "refused" && again.sentence).toBe(
      "Blends already holds lots of batch B-118: give this one another number.",
    );
    host.undo();
    expect(host.book).toEqual(before);
    const odd = await planBatch(host, { ...three, batch: "B*" });
    expect(odd.kind === "refused" && odd.sentence).toContain("wildcard");
  });

  it("makes both tables where there is none, and undo takes both away", async () => {
    const host = openMemory(without("Batches", "Blends", "Lots of oil", "Lots"));
    const before = host.book;
    const { results } = await recorded(host, three);
    expect(results["Acid value mg KOH/g"]).toBeTypeOf("number");
    expect(host.book.tables.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["Batches", "Blends"]),
    );
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("in a workbook of an earlier time goes into two columns, and three lots are refused", async () => {
    const old = without("Batches", "Blends", "Lots");
    const host = openMemory({ ...old, sheets: [...old.sheets, tableSheet(batchesAlone, [{}])] });
    const two = { ...slipwayBatch, lots: mixOf(["SW-17", "60"], ["NQ-41", "40"]) };
    const { results } = await recorded(host, two);
    expect(results["Acid value mg KOH/g"]).toBeCloseTo(0.6 * slipway + 0.4 * northQuay, 12);
    const refused = await planBatch(host, { ...three, batch: "B-119" });
    expect(refused.kind === "refused" && refused.sentence).toContain("two lots at most");
    const nobody = { ...two, batch: "B-120", lots: mixOf(["SW-17", "100"], ["NQ-41", "0"]) };
    expect((await recorded(host, nobody)).results["Catalyst g"]).toEqual({ error: "#N/A" });
  });

  it("lies between its least and its greatest lot, whatever the order of its lots", async () => {
    type Shares = readonly (readonly [string, string])[];
    const acidOf = async (order: Shares): Promise<number> => {
      const host = openMemory(sampleLogbook());
      const record = {
        ...slipwayBatch,
        amount: exact(order.reduce((sum, [, part]) => sum + Number(part), 0)),
        lots: mixOf(...order),
      };
      return Number((await recorded(host, record)).results["Acid value mg KOH/g"]);
    };
    const known = new Map<string, Promise<number>>();
    const acidAlone = (lot: string): Promise<number> => {
      const halves = (): Shares => [
        [lot, "50"],
        [lot.toLowerCase(), "50"],
      ];
      const acid = known.get(lot) ?? acidOf(halves());
      known.set(lot, acid);
      return acid;
    };
    await fc.assert(
      fc.asyncProperty(
        fc.shuffledSubarray(["SW-17", "NQ-41", "BL-03", "NQ-42"], { minLength: 2 }),
        fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 4, maxLength: 4 }),
        async (lots, parts) => {
          const shares = lots.map((lot, at) => [lot, String(parts[at] ?? 1)] as const);
          const alone = await Promise.all(lots.map(acidAlone));
          const mixed = await acidOf(shares);
          expect(mixed).toBeGreaterThanOrEqual(Math.min(...alone) - 1e-9);
          expect(mixed).toBeLessThanOrEqual(Math.max(...alone) + 1e-9);
          expect(await acidOf([...shares].reverse())).toBeCloseTo(mixed, 10);
        },
      ),
      { numRuns: 4 },
    );
  });
});
