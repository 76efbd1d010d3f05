/** The sheet Over time in the embedded spreadsheet: what its own engine makes of the formulas. */
import { ICommandService, UndoCommand } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { isFault } from "../../src/sheet/port";
import { WorkbenchHost } from "../../src/host/workbench";
import { openHeadless } from "../../src/workbench/engine/node";
import { blankSeries } from "../../src/workbook/over-time/blank-series";
import { strengthSeries } from "../../src/workbook/over-time/strength-series";
import { titrantHistories } from "../../src/workbook/over-time/titrant-history";
import { planOverTime, writeOverTime } from "../../src/workbook/planning/plan-over-time";
import { readTitrants } from "../../src/workbook/planning/read-titrants";
import { readTitrations } from "../../src/workbook/planning/read-titrations";
import { sampleLogbook } from "../../src/workbook/sample/logbook";

async function seriesOf(host: WorkbenchHost) {
  const titrations = await readTitrations(host);
  const titrants = await readTitrants(host);
  if (isFault(titrations) || isFault(titrants)) throw new Error("cannot be read");
  const bottle = titrantHistories(titrants ?? []).find(({ titrant }) => titrant === "K-5");
  return [blankSeries(titrations.rows), strengthSeries(bottle, 46_295)].filter(
    (each) => each.kind === "series",
  );
}

describe("the sheet Over time in the workbench", () => {
  it("has CONTROL and STRENGTHON of its own figures beside them, and one undo takes it away", async () => {
    const open = await openHeadless(sampleLogbook());
    const host = new WorkbenchHost(open.injector);
    const asked = { series: await seriesOf(host), today: 46_295 };
    expect(asked.series).toHaveLength(2);
    const plan = await planOverTime(host, asked);
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    expect(plan.remarks.map(({ sentence }) => sentence)).toEqual([
      expect.stringContaining("A chart is drawn only in the spreadsheet program"),
    ]);
    const { fingerprint } = plan;
    const outcome = await writeOverTime(host, asked, { fingerprint, agreed: [] });
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });

    const used = { sheet: "Over time", row: 0, column: 0, rows: 40, columns: 10 };
    const found = await host.read([{ ask: "cells", block: used }]);
    if (isFault(found) || found[0]?.kind !== "cells") throw new Error("nothing read");
    const { values } = found[0];
    const beside = (label: string) => values.find((row) => row[7] === label)?.[8];
    // By hand: the sample's seven means of blanks, 0.15 five times and 0.2 twice.
    expect(beside("values")).toBe(7);
    expect(beside("centre")).toBeCloseTo((5 * 0.15 + 2 * 0.2) / 7, 9);
    expect(beside("strength on that day")).toBeCloseTo(0.0996, 4);

    await open.injector.get(ICommandService).executeCommand(UndoCommand.id);
    await open.computed();
    const sheets = await host.read([{ ask: "sheets" }]);
    if (isFault(sheets) || sheets[0]?.kind !== "sheets") throw new Error("nothing read");
    expect(sheets[0].sheets.map(({ name }) => name)).not.toContain("Over time");
    open.close();
  });
});
