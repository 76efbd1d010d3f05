/** Lye on the shelf: put down in a table of its own, and read from there. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import type { LyeLotRecord } from "../../../src/workbook/record/lye-lot-record";
import { readLyeLots } from "../../../src/workbook/planning/bench/read-lye-lots";
import { planLyeLot, recordLyeLot } from "../../../src/workbook/planning/record/record-lye-lot";
import { tableSheet } from "../../../src/workbook/tables/sheet";
import { lyeLotsTable } from "../../../src/workbook/tables/lye-lots";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";

const lotOf = (lot: string, base: LyeLotRecord["base"], assay: string): LyeLotRecord => ({
  lot,
  base,
  assay: exact(assay),
  date: 46_300,
  note: "",
});

describe("the lots of lye of a workbook", () => {
  it("are none where an older workbook has no such table, and the first makes it", async () => {
    const host = openMemory(sampleLogbook());
    expect(await readLyeLots(host)).toEqual([]);
    for (const record of [lotOf("K-11", "KOH", "89.5"), lotOf("N-2", "NaOH", "99")]) {
      const plan = await planLyeLot(host, record);
      if (plan.kind !== "plan") throw new Error(plan.sentence);
      const outcome = await recordLyeLot(host, record, {
        fingerprint: plan.fingerprint,
        agreed: plan.mustConfirm.map(String),
      });
      expect(outcome.kind).toBe("recorded");
    }
    // the last written first
    expect(await readLyeLots(host)).toEqual([
      { base: "NaOH", lot: "N-2", assay: "99" },
      { base: "KOH", lot: "K-11", assay: "89.5" },
    ]);
  });

  it("leave out rows that say no lot, no base of ours, or an assay that can be none", async () => {
    const rows = [
      { Lot: "K-11", Base: "KOH", "Assay %": 0.9 },
      { Lot: "", Base: "KOH", "Assay %": 90 },
      { Lot: "A-1", Base: "ash", "Assay %": 90 },
      { Lot: "K-12", Base: "koh", "Assay %": 90 },
    ];
    const host = openMemory({ name: "a book", sheets: [tableSheet(lyeLotsTable, rows)] });
    expect(await readLyeLots(host)).toEqual([{ base: "KOH", lot: "K-12", assay: "90" }]);
  });
});
