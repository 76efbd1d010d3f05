import { describe, expect, it } from "vitest";
import { isFault } from "../../../src/sheet/port";
import { noDoseWords } from "../../../src/taskpane/card/no-dose";
import { readBatches } from "../../../src/workbook/planning/read-batches";
import { hostWith } from "../../workbook/card/computed";
import { slipwayBatch } from "../../workbook/record/batch-records";

async function read(cells: Readonly<Record<string, unknown>>) {
  const { host } = await hostWith(slipwayBatch);
  const found = await readBatches(host);
  if (found === undefined || isFault(found)) throw new Error("no batches");
  const batch = found.rows.find((each) => each.batch === slipwayBatch.batch);
  if (batch === undefined) throw new Error("no batch");
  const under = (heading: string) =>
    heading in cells ? (cells[heading] as ReturnType<typeof batch.under>) : batch.under(heading);
  return { ...batch, under };
}

const dose = "Catalyst g";
const acid = "Acid value mg KOH/g";

describe("a batch without a dose", () => {
  it("is told by its reason, and by its name, never by an error of a cell alone", async () => {
    const name = String(slipwayBatch.batch);
    const none = { error: "#N/A" };
    const words = async (cells: Readonly<Record<string, unknown>>) =>
      noDoseWords(await read({ ...cells, [dose]: none }));
    expect(await words({ [acid]: none })).toBe(`${name}: no acid value yet, so no dose.`);
    // by hand: 12 mg KOH/g is 12 x 282 / 561 = 6.03 % FFA, above the 5 % of the row
    expect(await words({ [acid]: 12, "Allowed FFA %": 5 })).toBe(
      `${name}: too much acid for a dose.`,
    );
    // where the row says no limit it is 5 %
    expect(await words({ [acid]: 12, "Allowed FFA %": "" })).toContain("too much acid");
    expect(await words({ [acid]: 2 })).toMatch(
      /: its row \d+ of Batches has no dose, it shows #N\/A\.$/,
    );
  });
});
