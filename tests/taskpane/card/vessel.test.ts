/** The vessel of My bench against a batch on record. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { isFault } from "../../../src/sheet/port";
import { tooMuchOf } from "../../../src/taskpane/card/vessel";
import { readBatches } from "../../../src/workbook/planning/read-batches";
import { readLots } from "../../../src/workbook/planning/read-lots";
import type { BatchRecord } from "../../../src/workbook/record/batch-record";
import { hostWith } from "../../workbook/card/computed";
import { mixOf, slipwayBatch } from "../../workbook/record/batch-records";

async function saysOf(batch: BatchRecord) {
  const { host } = await hostWith(batch);
  const [batches, lots] = [await readBatches(host), await readLots(host)];
  if (!batches || isFault(batches) || !lots || isFault(lots)) throw new Error("nothing read");
  const found = batches.rows.find((each) => each.batch === batch.batch);
  if (found === undefined) throw new Error("no batch");
  return (vessel: string, unit = "L") => tooMuchOf(found, lots, { vessel, unit }, ".");
}

describe("the vessel of My bench, on the card of a batch", () => {
  // by hand, of 2.6355 mg KOH/g: 91.5 kg x (1 - 2.6355/56.1 x 0.282468) x 6 x 32.042/867.5/0.7914 = 25.28 L
  it("is too small for oil and methanol together, in its own unit", async () => {
    const says = await saysOf(slipwayBatch);
    expect(says("125")).toBe(
      "Oil and methanol are 125.3 L, and the vessel holds 125.0 L: make less.",
    );
    expect(says("32", "US gal")).toContain("are 33.10 US gal");
    expect([says("126"), says("1", "kg")]).toEqual([undefined, undefined]);
  });

  // 100 kg at 0.915 kg/L are 109.29 L, and their methanol 25.28/0.915 = 27.63 L
  it("is as full of oil that was weighed, and of several lots", async () => {
    const lots = [{ lot: "SW-17", percent: exact("100"), amount: exact("100"), unit: "kg" }];
    const weighed = await saysOf({ ...slipwayBatch, unit: "kg", lots });
    expect(weighed("136")).toContain("are 136.9 L");
    expect(weighed("137")).toBeUndefined();
    // of 0.6 x 2.6355 + 0.4 x 1.2877 = 2.0964 mg KOH/g: 25.35 L of methanol
    const mixed = await saysOf({ ...slipwayBatch, lots: mixOf(["SW-17", "60"], ["NQ-41", "40"]) });
    expect(mixed("124")).toContain("Oil and methanol are 125.4 L");
  });
});
