/** The card of a batch on record: what is typed after it, and which row it is. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { isFault } from "../../../src/sheet/port";
import { alikeWords, amountsOf, batchWords, cardOf } from "../../../src/taskpane/card/card";
import { wentOf } from "../../../src/taskpane/card/went-of";
import { type RecordedBatch, readBatches } from "../../../src/workbook/planning/read-batches";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { hostWith } from "../../workbook/card/computed";
import { slipwayBatch } from "../../workbook/record/batch-records";

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
