/** A what-if table in the embedded spreadsheet: what its own engine makes of the formulas. */
import { ICommandService, UndoCommand } from "@univerjs/core";
import { afterEach, describe, expect, it } from "vitest";
import { isFault } from "../../src/sheet/port";
import type { Block, Cells, Host } from "../../src/sheet/port";
import { openHeadless } from "../../src/workbench/engine/node";
import type { Book } from "../../src/sheet/book";
import {
  planWhatIf,
  type WhatIfAsked,
  writeWhatIf,
} from "../../src/workbook/planning/what-if/plan-what-if";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { byHand, doses, question, type QuestionGiven } from "../workbook/what-if/questions";

const empty: Book = {
  name: "test",
  sheets: [{ name: "Sheet1", rows: [], columnWidths: [], tables: [], frozenRows: 0 }],
};

async function opened(book: Book) {
  const open = await openHeadless(book);
  const { WorkbenchHost } = await import("../../src/host/workbench");
  const undo = async (): Promise<void> => {
    await open.injector.get(ICommandService).executeCommand(UndoCommand.id);
    await open.computed();
  };
  return { host: new WorkbenchHost(open.injector), undo, close: () => open.close() };
}

async function cellsOf(host: Host, block: Block): Promise<Cells> {
  const found = await host.read([{ ask: "cells", block }]);
  if (isFault(found) || found[0]?.kind !== "cells") throw new Error("nothing read");
  return found[0];
}

const asking = (given: QuestionGiven, more: Partial<WhatIfAsked> = {}): WhatIfAsked => {
  const asked = question(given);
  return {
    question: asked,
    doses: doses(asked),
    place: { kind: "new-sheet" },
    form: "table",
    ...more,
  };
};

async function written(host: Host, asked: WhatIfAsked) {
  const plan = await planWhatIf(host, asked);
  if (plan.kind === "refused") throw new Error(plan.sentence);
  return writeWhatIf(host, asked, { fingerprint: plan.fingerprint, agreed: plan.mustConfirm });
}

describe("a what-if table in the workbench", () => {
  let close = (): void => undefined;
  afterEach(() => {
    close();
  });
  const open = async (book: Book) => {
    const found = await opened(book);
    close = found.close;
    return found;
  };

  it("shows 12 sizes by 4 acid values as the hand arithmetic does, and one undo takes it all back", async () => {
    const { host, undo } = await open(empty);
    const sizes = Array.from({ length: 12 }, (_, at) => 50 * (at + 1));
    const acids = [0.5, 2, 5, 9.9];
    const outcome = await written(
      host,
      asking({ sizes, columns: acids.map((acid) => ({ acid })) }),
    );
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const sheet = "What if";
    const { values } = await cellsOf(host, { sheet, row: 13, column: 0, rows: 13, columns: 6 });
    expect(values[0]?.[0]).toBe("Batch size, l");
    for (const [row, size] of sizes.entries()) {
      for (const [column, acid] of acids.entries()) {
        const dose = Number(values[row + 1]?.[column + 2]);
        expect(Math.abs(dose / byHand(size * 0.915, acid) - 1)).toBeLessThan(1e-12);
      }
    }
    await undo();
    const found = await host.read([{ ask: "sheets" }]);
    expect(found).toMatchObject([{ kind: "sheets", sheets: [{ name: "Sheet1" }] }]);
  });

  it("follows a recorded lot by the lot's name", async () => {
    const { host } = await open(sampleLogbook());
    const outcome = await written(
      host,
      asking({ unit: "kg", sizes: [100], columns: [{ acid: 1, lot: "NQ-43" }] }),
    );
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const { values } = await cellsOf(host, {
      sheet: "What if",
      row: 11,
      column: 2,
      rows: 5,
      columns: 1,
    });
    const [lot, acid, , , dose] = values.map(([value]) => value);
    expect(lot).toBe("NQ-43");
    expect(Number(acid)).toBeGreaterThan(0);
    expect(Number(dose) / byHand(100, Number(acid))).toBeCloseTo(1, 12);
  });

  it("fills the cells of one formula", async () => {
    const { host } = await open(empty);
    const outcome = await written(
      host,
      asking(
        { unit: "kg" },
        { form: "one-formula", place: { kind: "cell", sheet: "Sheet1", row: 2, column: 1 } },
      ),
    );
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const { values } = await cellsOf(host, {
      sheet: "Sheet1",
      row: 3,
      column: 1,
      rows: 2,
      columns: 3,
    });
    expect(values.map(([size]) => size)).toEqual([100, 200]);
    expect(Number(values[1]?.[2]) / byHand(200, 5)).toBeCloseTo(1, 12);
  });

  it("makes the sheet as large as the table needs it", async () => {
    const { host, undo } = await open(empty);
    const place = { kind: "cell", sheet: "Sheet1", row: 1190, column: 70 } as const;
    const outcome = await written(host, asking({ unit: "kg", sizes: [100] }, { place }));
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const last = { sheet: "Sheet1", row: 1204, column: 73, rows: 1, columns: 1 };
    expect(Number((await cellsOf(host, last)).values[0]?.[0]) / byHand(100, 5)).toBeCloseTo(1, 12);
    await undo();
    expect((await cellsOf(host, last)).values).toEqual([[""]]);
  });

  it("takes 50 sizes by 50 acid values", async () => {
    const { host } = await open(empty);
    const asked = asking({
      sizes: Array.from({ length: 50 }, (_, at) => 20 * (at + 1)),
      columns: Array.from({ length: 50 }, (_, at) => ({ acid: 0.15 * (at + 1) })),
    });
    const outcome = await written(host, asked);
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const { values } = await cellsOf(host, {
      sheet: "What if",
      row: 63,
      column: 51,
      rows: 1,
      columns: 1,
    });
    expect(Number(values[0]?.[0]) / byHand(1000 * 0.915, 7.5)).toBeCloseTo(1, 12);
  });
});
