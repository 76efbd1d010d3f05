/** A record whose results are errors is written, and is not called done; an optional figure may lack. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { afterWriting } from "../../../src/taskpane/planned/carrying";
import {
  planTitration,
  recordTitration,
} from "../../../src/workbook/planning/record/record-titration";
import type { TitrationRecord } from "../../../src/workbook/record/titration-record";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { fryerLot } from "../../workbook/record/records";

async function written(record: TitrationRecord) {
  const host = openMemory(sampleLogbook());
  const plan = await planTitration(host, record);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm: agreed } = plan;
  const carrying = afterWriting(await recordTitration(host, record, { fingerprint, agreed }));
  if (carrying.state !== "written") throw new Error(carrying.state);
  return carrying;
}

describe("what is said of a record that was written", () => {
  it("is not done when a result is an error: the reason is said, once for all results it holds for", async () => {
    const carrying = await written({ ...fryerLot, molarity: exact("25") });
    expect(carrying.isWell).toBe(false);
    expect(carrying.sentence).toMatch(/but not every result could be worked out\.$/);
    const [said = ""] = carrying.differences;
    expect(said).toMatch(/Acid value mg KOH\/g/);
    expect(said).toMatch(/\(#VALUE!\) \S/);
  });

  it("is done when all results are there", async () => {
    const carrying = await written(fryerLot);
    expect(carrying).toMatchObject({ isWell: true, differences: [] });
  });

  it("is done without a figure that nobody has to give: there is no ± then", async () => {
    const carrying = await written({ ...fryerLot, titreStep: undefined });
    expect(carrying).toMatchObject({ isWell: true, differences: [] });
  });
});
