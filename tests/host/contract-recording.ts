/** Recording a titration, on any host: the row, its results, and one undo that takes all of it back. */
import { expect, it } from "vitest";
import { exact } from "../../src/core/exact/exact";
import { type Block, type Found, type Host, isFault } from "../../src/sheet/port";
import type { Book } from "../../src/sheet/book";
import type { Plan, RecordOutcome } from "../../src/workbook/planning/plan";
import {
  planTitration,
  recordTitration,
} from "../../src/workbook/planning/record/record-titration";
import type { RowChoice } from "../../src/workbook/planning/record/target-row";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import type { TitrationRecord } from "../../src/workbook/record/titration-record";
import { awkwardTexts, fryerLot } from "../workbook/record/records";
import type { Opening } from "./contract-parts";

const emptyBook: Book = {
  name: "empty",
  sheets: [{ name: "Sheet1", rows: [], columnWidths: [], tables: [], frozenRows: 0 }],
};

/** Plans as a person would who takes the next free row where the first is occupied. */
export async function plannedRow(
  host: Host,
  record: TitrationRecord,
): Promise<{ readonly plan: Plan; readonly choice: RowChoice }> {
  const first = await planTitration(host, record);
  if (first.kind === "plan") return { plan: first, choice: "first" };
  if (!first.hasNextFree) throw new Error(first.sentence);
  const plan = await planTitration(host, record, "next free");
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  return { plan, choice: "next free" };
}

export const planned = async (host: Host, record: TitrationRecord): Promise<Plan> =>
  (await plannedRow(host, record)).plan;

/** Records as a person would who agrees to everything shown. */
export async function recorded(host: Host, record: TitrationRecord): Promise<RecordOutcome> {
  const { plan, choice } = await plannedRow(host, record);
  const { fingerprint, mustConfirm } = plan;
  const noPause = () => Promise.resolve();
  return recordTitration(host, record, { fingerprint, agreed: mustConfirm }, noPause, choice);
}

/** Everything a host can tell about a workbook. */
async function everything(host: Host): Promise<readonly Found[]> {
  const found = await host.read([{ ask: "sheets" }, { ask: "names" }]);
  if (isFault(found)) throw new Error(found.code);
  const [sheets, names] = found;
  const blocks = sheets?.kind === "sheets" ? sheets.sheets.flatMap(({ used }) => used ?? []) : [];
  const tables = names?.kind === "names" ? names.tables : [];
  const more = await host.read([
    ...blocks.map((block) => ({ ask: "cells", block }) as const),
    ...tables.map((name) => ({ ask: "table", name }) as const),
  ]);
  if (isFault(more)) throw new Error(more.code);
  return [...found, ...more];
}

const cellsOf = async (host: Host, block: Block) => {
  const found = await host.read([{ ask: "cells", block }]);
  const cells = isFault(found) ? undefined : found[0];
  if (cells?.kind !== "cells") throw new Error("no cells");
  return cells;
};

export function recordingContract(opening: Opening): void {
  it("puts a first titration into an empty workbook, with a table of its own, and undo removes it all", async () => {
    const { host, undo } = await opening(emptyBook);
    const before = await everything(host);
    const outcome = await recorded(host, fryerLot);
    expect(outcome).toMatchObject({ kind: "recorded", isReadBack: true, differences: [] });
    if (outcome.kind !== "recorded") return;
    // By hand: (2.4 + 2.45 + 2.4) / 3 - (0.1 + 0.15) / 2 = 2.416666... - 0.125 = 2.291666... mL;
    // 56.1 x 0.1 x 2.291666... / 5.02 = 2.561005... mg KOH/g.
    expect(outcome.results["Corrected titre mL"]).toBeCloseTo(2.4166666666667 - 0.125, 12);
    expect(outcome.results["Acid value mg KOH/g"]).toBeCloseTo(
      (56.1 * 0.1 * 2.2916666666667) / 5.02,
      12,
    );
    const [table] = (await host.read([{ ask: "table", name: "Titrations" }])) as Found[];
    expect(table).toMatchObject({ block: { sheet: "Titrations", row: 2, rows: 2 } });
    await undo();
    expect(await everything(host)).toEqual(before);
  });

  it("adds a row to the logbook it finds, and undo removes the row whole", async () => {
    const { host, undo } = await opening(sampleLogbook());
    const before = await everything(host);
    const outcome = await recorded(host, fryerLot);
    expect(outcome).toMatchObject({ kind: "recorded", isReadBack: true, differences: [] });
    if (outcome.kind !== "recorded") return;
    expect(outcome.plan.makes).toEqual([]);
    expect(outcome.results["Corrected titre mL"]).toBeCloseTo(2.4166666666667 - 0.125, 12);
    await undo();
    expect(await everything(host)).toEqual(before);
  });

  it("records titration after titration, each in a row of its own", async () => {
    const { host } = await opening(emptyBook);
    const lots = ["A", "B", "C"];
    for (const lot of lots) {
      expect(await recorded(host, { ...fryerLot, lot })).toMatchObject({ differences: [] });
    }
    const plan = await planned(host, fryerLot);
    const cells = await cellsOf(host, {
      ...plan.block,
      row: plan.block.row - 3,
      rows: 3,
      column: 1,
      columns: 1,
    });
    expect(cells.values.flat()).toEqual(lots);
  });

  it("records text as text, whatever it looks like", async () => {
    const { host } = await opening(emptyBook);
    for (const lot of awkwardTexts) {
      const outcome = await recorded(host, { ...fryerLot, lot, note: lot });
      expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
      if (outcome.kind !== "recorded") continue;
      const cells = await cellsOf(host, outcome.plan.block);
      expect([cells.values[0]?.[1], cells.formulas[0]?.[1]]).toEqual([lot, ""]);
    }
  });

  it("takes masses of their own, a neutralised solvent and an omitted reading", async () => {
    const { host } = await opening(emptyBook);
    const masses = [exact("5"), null, exact("4"), exact("5")];
    const outcome = await recorded(host, { ...fryerLot, blanks: "neutralised", masses });
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    if (outcome.kind !== "recorded") return;
    // By hand: 5.61 x (2.4/5 + 2.45/4 + 2.4/5) / 3 = 5.61 x 1.5725 / 3 = 2.940575.
    expect(outcome.results["Acid value mg KOH/g"]).toBeCloseTo(2.940575, 12);
  });

  it("plans the same from the same workbook, and nothing is written without a yes", async () => {
    const { host } = await opening(sampleLogbook());
    const before = await everything(host);
    expect(await planned(host, fryerLot)).toEqual(await planned(host, fryerLot));
    expect(await recordTitration(host, fryerLot, undefined)).toMatchObject({ kind: "to-confirm" });
    const wrong = { fingerprint: "another", agreed: [] };
    expect(await recordTitration(host, fryerLot, wrong)).toMatchObject({ kind: "to-confirm" });
    expect(await everything(host)).toEqual(before);
  });
}
