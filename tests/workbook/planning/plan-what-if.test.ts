import { describe, expect, it } from "vitest";
import { type Block, isFault } from "../../../src/sheet/port";
import type { MemoryHost } from "../../host/memory";
import type { Book } from "../../../src/sheet/book";
import type { Plan, Refusal } from "../../../src/workbook/planning/plan";
import {
  planWhatIf,
  type WhatIfAsked,
  writeWhatIf,
} from "../../../src/workbook/planning/what-if/plan-what-if";
import type { WhatIfPlace } from "../../../src/workbook/planning/what-if/what-if-place";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";
import { byHand, doses, question, type QuestionGiven } from "../what-if/questions";

const newSheet: WhatIfPlace = { kind: "new-sheet" };
const atCell = (row: number, column: number, sheet = "Sheet1"): WhatIfPlace => ({
  kind: "cell",
  sheet,
  row,
  column,
});

const asking = (
  given: QuestionGiven = {},
  place: WhatIfPlace = newSheet,
  form: WhatIfAsked["form"] = "table",
): WhatIfAsked => {
  const asked = question(given);
  return { question: asked, doses: doses(asked), place, form };
};

const planOf = (found: Plan | Refusal): Plan => {
  if (found.kind === "refused") throw new Error(found.sentence);
  return found;
};

const written = async (host: MemoryHost, asked: WhatIfAsked, agreed: readonly string[] = []) => {
  const { fingerprint } = planOf(await planWhatIf(host, asked));
  return writeWhatIf(host, asked, { fingerprint, agreed });
};

async function values(host: MemoryHost, block: Block) {
  const found = await host.read([{ ask: "cells", block }]);
  if (isFault(found) || found[0]?.kind !== "cells") throw new Error("nothing read");
  return found[0].values;
}

const bookWith = (rows: Book["sheets"][number]["rows"]): Book => ({
  name: "test",
  sheets: [{ name: "Sheet1", rows, columnWidths: [], tables: [], frozenRows: 0 }],
});

describe("planning a what-if table", () => {
  it("writes 12 sizes by 4 acid values as live formulas that agree with the hand arithmetic, in one undo", async () => {
    const host = openMemory();
    const before = host.book;
    const sizes = Array.from({ length: 12 }, (_, at) => 50 * (at + 1));
    const acids = [0.5, 2, 5, 9.9];
    const asked = asking({ sizes, columns: acids.map((acid) => ({ acid })) });
    const outcome = await written(host, asked);
    expect(outcome).toMatchObject({
      kind: "recorded",
      isReadBack: true,
      differences: [],
      sentence: "Written in A1:F26 of the sheet What if.",
    });
    const found = await values(host, {
      sheet: "What if",
      row: 14,
      column: 0,
      rows: 12,
      columns: 6,
    });
    for (const [row, size] of sizes.entries()) {
      expect(found[row]?.[0]).toBe(size);
      expect(Number(found[row]?.[1])).toBeCloseTo(size * 0.915, 9);
      for (const [column, acid] of acids.entries()) {
        const dose = Number(found[row]?.[column + 2]);
        expect(Math.abs(dose / byHand(size * 0.915, acid) - 1)).toBeLessThan(1e-12);
      }
    }
    expect(host.undoLabels).toHaveLength(1);
    host.undo();
    expect(host.book).toEqual(before);
  });

  it("follows its input cells", async () => {
    const host = openMemory();
    await written(host, asking());
    const change = (row: number, column: number, value: string | number) =>
      host.write("By hand", [
        {
          do: "set-cells",
          block: { sheet: "What if", row, column, rows: 1, columns: 1 },
          contents: [[{ kind: "value", value }]],
        },
      ]);
    await change(3, 0, "kg");
    await change(7, 0, 85);
    await change(11, 2, 4);
    const [row] = await values(host, { sheet: "What if", row: 14, column: 0, rows: 1, columns: 4 });
    expect(row?.[1]).toBe(100);
    expect(Number(row?.[2])).toBeCloseTo(byHand(100, 4, "KOH", 85), 9);
  });

  it("draws a chart of the columns that have a dose, below the table, and says what it leaves out", async () => {
    const host = openMemory();
    const asked = asking({ columns: [{ acid: 2 }, { acid: 20 }, { acid: 5 }] });
    const plan = planOf(await planWhatIf(host, asked));
    expect(plan.remarks.map(({ sentence }) => sentence)).toEqual([
      "The chart leaves out what has no dose: 20 mg KOH/g.",
    ]);
    expect(plan.makes.at(-1)).toBe(
      "A chart of 2 lines over A18:H35. It follows the cells; only the names of its lines do not.",
    );
    await written(host, asked);
    const at = (row: number, column: number, rows = 2) => ({
      sheet: "What if",
      row,
      column,
      rows,
      columns: 1,
    });
    expect(host.book.sheets[1]?.charts).toMatchObject([
      {
        title: "='What if'!$A$1",
        acrossTitle: "='What if'!$A$14",
        upTitle: "='What if'!$C$14",
        across: at(14, 0),
        lines: [
          { name: "2 mg KOH/g", values: at(14, 2) },
          { name: "5 mg KOH/g", values: at(14, 4) },
        ],
      },
    ]);
    const none = planOf(await planWhatIf(host, asking({ columns: [{ acid: 20 }] })));
    expect(none.remarks[0]?.sentence).toContain("no chart");
    expect(none.steps.some((step) => step.do === "add-chart")).toBe(false);
  });

  it("leaves the chart out where the program has none, and says so", async () => {
    const host = openMemory();
    const plain = Object.assign(Object.create(host) as MemoryHost, {
      capabilities: async () => ({
        ...(await host.capabilities()),
        program: "this page",
        hasCharts: false,
      }),
    });
    const plan = planOf(await planWhatIf(plain, asking()));
    expect(plan.steps.map((step) => step.do)).not.toContain("add-chart");
    expect(plan.remarks.map(({ sentence }) => sentence)).toEqual([
      "A chart is drawn only in the spreadsheet program: this page gets the table without one.",
    ]);
  });

  it("takes a sheet of another name where there is a What if already", async () => {
    const host = openMemory();
    await written(host, asking());
    await written(host, asking());
    expect(host.book.sheets.map(({ name }) => name)).toEqual(["Sheet1", "What if", "What if 2"]);
  });

  it("follows a recorded lot, and its titration when that is put right", async () => {
    const host = openMemory(sampleLogbook());
    const lot = host.book.sheets
      .flatMap(({ cells }) => Object.values(cells))
      .map(({ value }) => value)
      .find((value) => typeof value === "string" && /^[A-Z]{2}-\d+$/.test(value));
    const columns = [{ acid: 5, lot: String(lot) }];
    const outcome = await written(host, asking({ unit: "kg", sizes: [100], columns }));
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const [, acid, , , [, , dose] = []] = await values(host, {
      sheet: "What if",
      row: 11,
      column: 0,
      rows: 5,
      columns: 3,
    });
    expect(Number(acid?.[2])).toBeGreaterThan(0);
    expect(Number(dose)).toBeCloseTo(byHand(100, Number(acid?.[2])), 6);
  });
});

describe("planning a what-if table at a place that is used", () => {
  it("names each cell that would be lost, and writes only when each is confirmed", async () => {
    const host = openMemory(
      bookWith([
        [null, null],
        [null, { value: "keep me" }, { value: 7 }],
      ]),
    );
    const asked = asking({}, atCell(0, 0));
    const plan = planOf(await planWhatIf(host, asked));
    // A2 holds the words; B2 and C2 belong to no cell of the table
    expect(plan.mustConfirm).toEqual([]);
    const lower = asking({}, atCell(1, 1));
    const open = planOf(await planWhatIf(host, lower));
    expect(open.mustConfirm).toEqual(["Sheet1!B2"]);
    expect(open.remarks[0]?.sentence).toBe('Sheet1!B2 holds "keep me", which would be lost.');
    expect(await written(host, lower)).toMatchObject({ kind: "to-confirm" });
    expect(host.undoLabels).toEqual([]);
    expect(await written(host, lower, ["Sheet1!B2"])).toMatchObject({ kind: "recorded" });
    expect(
      (await values(host, { sheet: "Sheet1", row: 1, column: 2, rows: 1, columns: 1 }))[0],
    ).toEqual([7]);
  });

  it("writes nothing when the workbook changed since it was shown", async () => {
    const host = openMemory(bookWith([[null]]));
    const asked = asking({}, atCell(0, 0));
    const { fingerprint } = planOf(await planWhatIf(host, asked));
    await host.write("By hand", [
      {
        do: "set-cells",
        block: { sheet: "Sheet1", row: 0, column: 0, rows: 1, columns: 1 },
        contents: [[{ kind: "value", value: "mine" }]],
      },
    ]);
    const outcome = await writeWhatIf(host, asked, { fingerprint, agreed: [] });
    expect(outcome).toMatchObject({ kind: "to-confirm" });
    expect(
      (await values(host, { sheet: "Sheet1", row: 0, column: 0, rows: 1, columns: 1 }))[0],
    ).toEqual(["mine"]);
  });

  it("refuses a place that is full, one in a table, and one past the end of the sheet", async () => {
    const full = openMemory(
      bookWith(Array.from({ length: 20 }, () => [{ value: 1 }, { value: 2 }])),
    );
    expect(await planWhatIf(full, asking({}, atCell(0, 0)))).toMatchObject({
      kind: "refused",
      sentence: expect.stringContaining("Too many cells") as string,
    });
    const logbook = openMemory(sampleLogbook());
    expect(await planWhatIf(logbook, asking({}, atCell(2, 2, "Titrations")))).toMatchObject({
      kind: "refused",
      sentence: expect.stringContaining("lies in the table Titrations") as string,
    });
    expect(await planWhatIf(full, asking({}, atCell(1_048_570, 0)))).toMatchObject({
      sentence: expect.stringContaining("The sheet ends before") as string,
    });
    expect(await planWhatIf(full, asking({}, atCell(0, 0, "Gone")))).toMatchObject({
      sentence: "The sheet Gone is gone: select a place again.",
    });
  });

  it("refuses a protected sheet and a protected workbook", async () => {
    const host = openMemory();
    host.change((book) => {
      book.isProtected = true;
      for (const sheet of book.sheets) sheet.isProtected = true;
    });
    expect(await planWhatIf(host, asking())).toMatchObject({
      sentence: expect.stringContaining("The workbook is protected against new sheets") as string,
    });
    expect(await planWhatIf(host, asking({}, atCell(0, 0)))).toMatchObject({
      sentence: expect.stringContaining("is protected. Nothing was written") as string,
    });
  });

  it("says what its chart would lie over", async () => {
    const rows = Array.from({ length: 20 }, (_, at) => (at === 19 ? [{ value: "below" }] : []));
    const host = openMemory(bookWith(rows));
    const plan = planOf(await planWhatIf(host, asking({}, atCell(0, 0))));
    expect(plan.remarks[0]?.sentence).toContain("lie over cells that hold something (Sheet1!A20)");
    expect(plan.mustConfirm).toEqual([]);
  });
});

describe("planning one formula that spills", () => {
  it("is one cell, and needs its whole room empty", async () => {
    const host = openMemory(bookWith([[null], [null, { value: "in the way" }]]));
    const sentence = (found: Plan | Refusal) =>
      found.kind === "refused" ? found.sentence : found.summary;
    const blocked = await planWhatIf(host, asking({}, atCell(0, 0), "one-formula"));
    expect(sentence(blocked)).toContain("stands in Sheet1!B2");
    const asked = asking({}, atCell(5, 0), "one-formula");
    expect(sentence(await planWhatIf(host, asked))).toBe(
      "Sheet1!A6: one formula that fills A6:C8, 2 batch sizes by 2 acid values.",
    );
    expect(await written(host, asked)).toMatchObject({ kind: "recorded", differences: [] });
    expect(host.book.sheets[0]?.cells["5,0"]?.formula).toBe(
      '=TITRE.WHATIF({100;200},"l",{2,5},"KOH",90,0.765,"used cooking oil",5)',
    );
  });

  it("is refused with its reason where it would not say the same", async () => {
    const host = openMemory();
    expect(await planWhatIf(host, asking({ by: "base" }, newSheet, "one-formula"))).toMatchObject({
      kind: "refused",
      sentence: expect.stringContaining("acid values alone") as string,
    });
  });
});

describe("a table of 50 by 50", () => {
  it("is planned, written and read back whole", async () => {
    const host = openMemory();
    const asked = asking({
      sizes: Array.from({ length: 50 }, (_, at) => 20 * (at + 1)),
      columns: Array.from({ length: 50 }, (_, at) => ({ acid: 0.15 * (at + 1) })),
    });
    const outcome = await written(host, asked);
    expect(outcome).toMatchObject({ kind: "recorded", differences: [] });
    const [corner] = await values(host, {
      sheet: "What if",
      row: 63,
      column: 51,
      rows: 1,
      columns: 1,
    });
    expect(Number(corner?.[0]) / byHand(1000 * 0.915, 7.5)).toBeCloseTo(1, 12);
  });
});
