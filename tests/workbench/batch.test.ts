/** A batch in the embedded engine: its row's figures, and its card to print as it reaches the file. */
import { describe, expect, it } from "vitest";
import { exact } from "../../src/core/exact/exact";
import { makeCard, planCard } from "../../src/workbook/planning/plan-card";
import { planBatch, recordBatch } from "../../src/workbook/planning/record/record-batch";
import type { BatchRecord } from "../../src/workbook/record/batch-record";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { mixOf, slipwayBatch } from "../workbook/record/batch-records";
import { type FileInGrid, inGrid, opened } from "./file";

const sample = (): Uint8Array => {
  const bytes = newXlsx(sampleLogbook());
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
};

const hostOf = async ({ grid }: FileInGrid) => {
  const { WorkbenchHost } = await import("../../src/host/workbench");
  return new WorkbenchHost(grid.injector);
};

async function resultsOf(file: FileInGrid, record: BatchRecord) {
  const host = await hostOf(file);
  const plan = await planBatch(host, record);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm } = plan;
  const outcome = await recordBatch(host, record, { fingerprint, agreed: mustConfirm });
  if (outcome.kind !== "recorded") throw new Error(outcome.sentence);
  expect(outcome.differences).toEqual([]);
  return outcome.results;
}

/** By hand: SW-17 has 14.6/3 - 0.15 mL on 10.02 g, NQ-41 2.3 mL on 10 g. */
const slipway = (56.1 * 0.0998 * (14.6 / 3 - 0.15)) / 10.02;
const northQuay = (56.1 * 0.0998 * 2.3) / 10;

describe("a batch in the embedded engine", () => {
  it("works out two lots, a titrant taken as pure and a methoxide solution in the row itself", () =>
    inGrid(sample(), async (file) => {
      const lots = mixOf(["SW-17", "60"], ["NQ-41", "40"]);
      const mixed = await resultsOf(file, { ...slipwayBatch, lots, isTitrantAsIfPure: true });
      expect(mixed["Acid value mg KOH/g"]).toBeCloseTo(0.9 * (0.6 * slipway + 0.4 * northQuay), 12);
      const solution = await resultsOf(file, {
        ...slipwayBatch,
        batch: "B-119",
        base: "NaOCH3",
        assay: exact("30"),
        charge: exact("0.5"),
      });
      const brought = (Number(solution["Catalyst g"]) * 0.7) / 791.4;
      expect(solution["Methanol to add L"]).toBeCloseTo(
        Number(solution["Methanol L"]) - brought,
        9,
      );
    }));

  it("follows what is put right afterwards, in Blends and in the titration behind it", () =>
    inGrid(sample(), async (file) => {
      const lots = mixOf(["SW-17", "60"], ["NQ-41", "40"]);
      await resultsOf(file, { ...slipwayBatch, lots });
      await resultsOf(file, { ...slipwayBatch, batch: "B-119", lots });
      const { cells } = file.grid;
      const tableOn = (sheet: string) => {
        const [table] = cells.names.tables(sheet);
        if (!table) throw new Error(`no table on ${sheet}`);
        return table;
      };
      /** The cell under a heading in the first row that begins with some words. */
      const cellOf = (sheet: string, words: string, under: number, heading: string) => {
        const { top, left, bottom, right } = tableOn(sheet);
        const at = (row: number, column: number) => cells.value({ sheet, row, column });
        const columns = Array.from({ length: right - left + 1 }, (_, each) => left + each);
        const column = columns.find((each) => at(top, each) === heading) ?? -1;
        const rows = Array.from({ length: bottom - top }, (_, each) => top + 1 + each);
        const row = rows.find((each) => at(each, left + under) === words) ?? -1;
        return { sheet, row, column };
      };
      // a busy engine may still be at it
      const expectAcid = (batch: string) =>
        expect.poll(
          () => cells.value(cellOf("Batches", batch, 1, "Acid value mg KOH/g")) ?? Number.NaN,
          { timeout: 60_000 },
        );
      await expectAcid("B-119").toBeCloseTo(0.6 * slipway + 0.4 * northQuay, 12);
      // B-118 stands first in Blends: half and half from now on
      await file.grid.type(cellOf("Blends", "SW-17", 1, "Amount"), [[40]]);
      await expectAcid("B-118").toBeCloseTo(0.5 * slipway + 0.5 * northQuay, 12);
      await expectAcid("B-119").toBeCloseTo(0.6 * slipway + 0.4 * northQuay, 12);
      await file.grid.type(cellOf("Titrations", "NQ-41", 1, "Mass g"), [[5]]);
      await expectAcid("B-118").toBeCloseTo(0.5 * slipway + northQuay, 12);
      await expectAcid("B-119").toBeCloseTo(0.6 * slipway + 0.8 * northQuay, 12);
    }));

  it("puts the card to print into the saved file with its area, its large type and its figures", () =>
    inGrid(sample(), async (file) => {
      const lots = mixOf(["SW-17", "60"], ["NQ-41", "40"]);
      await resultsOf(file, { ...slipwayBatch, lots });
      const host = await hostOf(file);
      // the row after the last of the sample's seven
      const asked = { row: 11, batch: "B-118", units: "us" } as const;
      const plan = await planCard(host, asked);
      if (plan.kind !== "plan") throw new Error(plan.sentence);
      const confirmed = { fingerprint: plan.fingerprint, agreed: [] };
      expect(await makeCard(host, asked, confirmed)).toMatchObject({ differences: [] });
      const { edits } = await file.edits();
      const { row, column, rows, columns } = plan.block;
      expect(edits).toContainEqual({
        do: "print-setup",
        sheet: "Card B-118",
        area: { row, column, rows, columns },
        landscape: false,
        fitToWidth: true,
        secondPage: expect.any(Number),
      });
      const saved = opened(await file.saved());
      const sheet = saved.sheets.find(({ name }) => name === "Card B-118");
      const pounds = sheet?.cells.find(({ formula }) => formula?.includes("Catalyst g"));
      const acid = 0.6 * slipway + 0.4 * northQuay;
      const ounces = (91.5 * ((acid / 56.1) * 56.1053 + 7.65)) / 0.9 / 28.349523125;
      expect(pounds?.value).toBe(Math.floor(ounces / 16));
      expect(saved.looks[pounds?.look ?? 0]?.size).toBe(22);
    }));
});
