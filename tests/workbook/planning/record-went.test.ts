/** How a batch went, into its own row, with what stood there named and agreed to. */
import { describe, expect, it } from "vitest";
import { readBatches } from "../../../src/workbook/planning/read-batches";
import { planWent, recordWent } from "../../../src/workbook/planning/record/record-went";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";

/** B-112 of the sample: 100 L of NQ-41, 910 g of 90 % KOH weighed, 96 L made. */
const row = 4;

describe("how a batch went", () => {
  it("is written into its row after what stands there was agreed to, and one undo takes it back", async () => {
    const host = openMemory(sampleLogbook());
    const before = host.book;
    const values = { weighed: 800, seen: "Thin layer." };
    const record = { row, batch: "B-112", values, asWorkedOut: [], doubts: [] };
    const plan = await planWent(host, record);
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    expect(plan.remarks[0]?.sentence).toBe("The logbook says 910 g of lye. Replace it with 800 g?");
    const { fingerprint, mustConfirm } = plan;
    expect((await recordWent(host, record, { fingerprint, agreed: [] })).kind).toBe("to-confirm");
    expect(host.book).toEqual(before);
    const outcome = await recordWent(host, record, { fingerprint, agreed: mustConfirm });
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const found = await readBatches(host);
    if (found === undefined || "code" in found) throw new Error("no batches");
    const under = found.rows.find(({ batch }) => batch === "B-112")?.under;
    // by hand: NQ-41 has 2.3 mL on 10 g; 91.5 kg; charge left = 0.765 + 0.9/10 x (800 - catalyst)/91.5
    const acid = (56.1 * 0.0998 * 2.3) / 10;
    const catalyst = (91.5 * ((acid / 56.1) * 56.1053 + 7.65)) / 0.9;
    expect(under?.("Left for reaction %")).toBeCloseTo(0.765 + (0.09 * (800 - catalyst)) / 91.5, 9);
    expect(under?.("It went")).toMatch(/^Less lye than meant: 0\.658 % of the oil .* not 0\.765 %/);
    expect(under?.("Yield %")).toBeCloseTo(96, 9);
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("says in the row, as the card does, that there is more fuel than oil gives and that oil was left", async () => {
    const host = openMemory(sampleLogbook());
    const went = async (litres: number, trial: string) => {
      const record = {
        row,
        batch: "B-112",
        values: { litres, trial },
        asWorkedOut: [],
        doubts: [],
      };
      const plan = await planWent(host, record);
      if (plan.kind !== "plan") throw new Error(plan.sentence);
      const { fingerprint, mustConfirm: agreed } = plan;
      await recordWent(host, record, { fingerprint, agreed });
      const found = await readBatches(host);
      if (found === undefined || "code" in found) throw new Error("no batches");
      return String(found.rows.find(({ batch }) => batch === "B-112")?.under("It went"));
    };
    // by hand: 100 L of oil, so 110 L is the edge itself and 115 L is 115 %
    expect(await went(110, "clear")).not.toMatch(/Fuel|Not done/);
    expect(await went(115, "clear")).toMatch(/\. Fuel 115 % of the oil: more than it can give\./);
    expect(await went(96, "oil at the bottom")).toMatch(
      /\. Not done: oil was left in the methanol trial/,
    );
  });

  it("says of which lot nothing was typed", async () => {
    const host = openMemory(sampleLogbook());
    const record = { row, batch: "B-112", values: { oil: 93 }, asWorkedOut: ["NQ-41"], doubts: [] };
    const plan = await planWent(host, record);
    expect(plan.kind === "plan" && plan.remarks.map(({ sentence }) => sentence)).toEqual([
      "Nothing is typed for NQ-41: taken as worked out.",
    ]);
  });

  it("is refused where the rows have moved since the card was read", async () => {
    const host = openMemory(sampleLogbook());
    const record = {
      row: row + 1,
      batch: "B-112",
      values: { washes: 3 },
      asWorkedOut: [],
      doubts: [],
    };
    const plan = await planWent(host, record);
    expect(plan).toMatchObject({ kind: "refused" });
  });
});
