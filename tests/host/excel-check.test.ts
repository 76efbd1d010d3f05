/** "Check this Excel", whole, through the program's own calls on the stand-in. */
import { afterEach, describe, expect, it } from "vitest";
import { reportIn } from "../../src/cli/scenarios/read-back";
import { ExcelHost } from "../../src/host/excel";
import { ExcelProgram } from "../../src/host/excel/checked-program";
import { functionNamed } from "../../src/functions/catalogue";
import type { BookCell, BookResult } from "../../src/sheet/book";
import type { Block, CellContent, Host, Question, Step } from "../../src/sheet/port";
import { isRefused } from "../../src/sheet/refusal";
import { checkLines, type Colour, type LineId } from "../../src/workbook/checking/lines";
import { reportSheet } from "../../src/workbook/checking/report";
import { type Checked, checkThisExcel } from "../../src/workbook/checking/run";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { ExcelStandIn, installExcel } from "./excel/stand-in";
import { cellAt, emptyBook, type MemoryBook, sheetNamed } from "./memory/book";
import { memoryBook } from "./open-memory";

const agent =
  "Mozilla/5.0 (Windows NT 10.0; somebody's machine) Chrome/120.0.0.0 Edg/120.0.2210.91";

/** What the one answer over many cells is in the file, which the stand-in does not keep. */
const spilled = functionNamed("SPREAD")?.evaluate([[[2.4, 2.5, 2.45]], 0.05]) as BookResult[][];

/** The workbook as a file, as the program would hand it out. */
function fileOf({ sheets, tables }: MemoryBook): Uint8Array {
  const rowsOf = (cells: MemoryBook["sheets"][number]["cells"]) => {
    const rows: (BookCell | null)[][] = [];
    for (const [place, { value, formula }] of Object.entries(cells)) {
      const [row = 0, column = 0] = place.split(",").map(Number);
      if (value === "" && formula === "") continue;
      const results = formula.includes("SPREAD") ? { results: spilled } : {};
      (rows[row] ??= [])[column] = formula === "" ? { value } : { formula, ...results };
    }
    return Array.from(rows, (row) => Array.from(row ?? [], (cell) => cell ?? null));
  };
  const made = newXlsx({
    name: "checked",
    sheets: sheets.map(({ name, cells }) => ({
      name,
      rows: rowsOf(cells),
      columnWidths: [],
      tables: tables
        .filter(({ block }) => block.sheet === name)
        .map(({ name: called, block }) => ({ ...block, name: called })),
      frozenRows: 0,
    })),
  });
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

function handsOutItsFile(standIn: ExcelStandIn): void {
  const done = (value: unknown) => ({ status: "succeeded", value });
  Object.assign(Office, {
    FileType: { Compressed: "c" },
    AsyncResultStatus: { Succeeded: "succeeded" },
  });
  Object.assign(Office.context, {
    document: {
      getFileAsync: (_: string, back: (result: unknown) => void) => {
        const data = fileOf(standIn.model.book);
        back(
          done({
            size: data.length,
            sliceCount: 1,
            getSliceAsync: (__: number, give: (result: unknown) => void) => {
              give(done({ data, size: data.length }));
            },
            closeAsync: () => undefined,
          }),
        );
      },
    },
  });
}

const lostAt: Block = { sheet: "Check cells", row: 0, column: 14, rows: 1, columns: 1 };

/** A call that a file holds shows #NAME? until it is written again, with its name as the cell shows it. */
function losing(host: Host, heals: boolean): Host {
  let isLost = true;
  const isPlace = (block: Block): boolean => block.sheet === "Check cells" && block.column <= 14;
  return Object.assign(Object.create(host) as Host, {
    write: (label: string, steps: readonly Step[]) => {
      if (heals && label === "Ask Titrebook again") isLost = false;
      return host.write(label, steps);
    },
    read: async (questions: readonly Question[]) => {
      const found = await host.read(questions);
      if (!isLost || "code" in found) return found;
      return found.map((each, place) => {
        const question = questions[place];
        if (
          each.kind === "areas" &&
          question?.ask === "errors" &&
          question.sheet === lostAt.sheet
        ) {
          return { ...each, blocks: [...each.blocks, lostAt] };
        }
        if ((each.kind !== "values" && each.kind !== "cells") || !isPlace(each.block)) return each;
        const values = each.values.map((row, r) =>
          row.map((value, c) =>
            each.block.row + r === 0 && each.block.column + c === 14 ? { error: "#NAME?" } : value,
          ),
        );
        return { ...each, values };
      });
    },
  });
}

/** The stand-in keeps no answer over many cells: this does, for the one that the check writes. */
function spilling(host: Host, standIn: ExcelStandIn): Host {
  const at = { row: 0, column: 8 };
  return Object.assign(Object.create(host) as Host, {
    read: async (questions: Parameters<Host["read"]>[0]) => {
      const found = await host.read(questions);
      if ("code" in found) return found;
      return found.map((each) => {
        if (each.kind !== "values" || each.block.sheet !== "Check cells") return each;
        if (each.block.column !== at.column || each.block.row !== at.row) return each;
        const sheet = sheetNamed(standIn.model.book, "Check cells");
        const isBlocked = sheet && cellAt(sheet, at.row, at.column + 1).value !== "";
        const one = (): CellContent => (isBlocked ? { error: "#SPILL!" } : "n");
        return { ...each, values: each.values.map((row) => row.map(one)) };
      });
    },
  });
}

interface Given {
  readonly book?: MemoryBook;
  readonly prepare?: (standIn: ExcelStandIn) => void;
  readonly refusals?: readonly string[];
  readonly undo?: (standIn: ExcelStandIn) => boolean;
  readonly spills?: boolean;
  /** A call is lost, and can be mended or not. */
  readonly lost?: "mended" | "for good";
}

async function check({
  book = emptyBook(),
  prepare,
  refusals = [],
  undo,
  spills = true,
  lost,
}: Given = {}) {
  const standIn = new ExcelStandIn(book);
  installExcel(standIn);
  handsOutItsFile(standIn);
  prepare?.(standIn);
  const plain = new ExcelHost();
  const own = lost === undefined ? plain : losing(plain, lost === "mended");
  let time = 0;
  const told: string[] = [];
  const checked = await checkThisExcel(
    {
      host: spills ? spilling(own, standIn) : own,
      program: new ExcelProgram(() => refusals, agent),
      pause: () => Promise.resolve(),
      now: () => (time += 1500),
    },
    {
      tell: (what) => told.push(what),
      undo: () => {
        if (undo) return Promise.resolve(undo(standIn));
        standIn.undo();
        return Promise.resolve(true);
      },
    },
    "2026-05-04",
  );
  return { checked, standIn, told };
}

const done = (checked: Awaited<ReturnType<typeof check>>["checked"]): Checked => {
  if (isRefused(checked)) throw new Error(checked.sentence);
  return checked;
};

/** The lines that are not green, with their colour. */
const others = ({ report }: Checked): Partial<Record<LineId, Colour>> =>
  Object.fromEntries(
    report.seen.filter(({ colour }) => colour !== "green").map(({ id, colour }) => [id, colour]),
  );

describe("Check this Excel", () => {
  afterEach(() => {
    for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
  });

  it("sees every line once, in order, all green where the program does as it must, and misuses nothing", async () => {
    const { checked, standIn, told } = await check();
    const found = done(checked);
    expect(found.report.seen.map(({ id }) => id)).toEqual(checkLines.map(({ id }) => id));
    // nothing was lost that could have been mended: see below
    expect(others(found)).toEqual({ healing: "amber" });
    expect(standIn.misuses).toEqual([]);
    expect(told.length).toBeGreaterThan(8);
    for (const { words } of found.report.seen) expect(words).not.toBe("");
  });

  it("leaves a sheet that is read back as what was seen, and nothing of who uses the machine", async () => {
    const { checked, standIn } = await check({ refusals: ["frame-src https://telemetry.example"] });
    const { report } = done(checked);
    expect(reportIn(fileOf(standIn.model.book), "came-back.xlsx")).toEqual(report);
    expect(report.where).toEqual({
      titrebook: "0.1.0",
      program: "16.0.0.1",
      platform: "PC",
      engine: "Edg/120.0.2210.91",
      day: "2026-05-04",
    });
    const cells = sheetNamed(standIn.model.book, reportSheet)?.cells ?? {};
    expect(JSON.stringify(cells)).not.toContain("somebody");
  });

  it("touches no workbook that holds something: nothing is written there, and it says why", async () => {
    const book = memoryBook({
      name: "log",
      sheets: [
        { name: "Log", rows: [[{ value: "NQ-41" }]], columnWidths: [], tables: [], frozenRows: 0 },
      ],
    });
    const { checked, standIn } = await check({ book });
    expect(checked).toMatchObject({
      kind: "refused",
      sentence: expect.stringMatching(/holds something/) as string,
    });
    expect(standIn.changes).toBe(0);
  });

  it("takes its sheets out when asked, and leaves those that were there and the report", async () => {
    const { checked, standIn } = await check();
    const { sheets } = done(checked);
    expect(await new ExcelProgram(() => [], agent).removeSheets(sheets)).toBeUndefined();
    expect(standIn.model.book.sheets.map(({ name }) => name)).toEqual(["Sheet1", reportSheet]);
    expect(standIn.model.book.tables).toEqual([]);
  });
});

describe("Check this Excel, where the program does not as it must", () => {
  afterEach(() => {
    for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
  });

  const slips: readonly (readonly [string, Given, Partial<Record<LineId, Colour>>, RegExp])[] = [
    ["it does not spill", { spills: false }, { spills: "red" }, /does not spill/],
    ["a call is lost, and comes back", { lost: "mended" }, { healing: "green" }, /never/],
    ["a call is lost for good", { lost: "for good" }, { healing: "red" }, /after being mended/],
    ["undo is not pressed", { undo: () => false }, { undo: "amber" }, /not pressed/],
    ["one undo takes nothing back", { undo: () => true }, { undo: "red" }, /still there/],
    [
      "it refuses notes",
      { prepare: (standIn) => (standIn.broken = { what: /notes\.add/, code: "GeneralException" }) },
      { notes: "red" },
      /note was refused/,
    ],
    [
      "it lacks what is asked for",
      { prepare: ({ model }) => (model.newest = 12) },
      { offers: "red", charts: "green", notes: "amber" },
      /Lacking: ExcelApi 1\.13/,
    ],
    [
      "its policy refuses more than a frame",
      { refusals: ["connect-src https://x.example"] },
      { policy: "red" },
      /x\.example/,
    ],
    [
      "it does not hand out its file",
      { prepare: () => Object.assign(Office.context, { document: {} }) },
      { file: "red" },
      /failed/,
    ],
  ];

  it.each(slips)("says so: %s", async (_, given, colours, says) => {
    const { checked } = await check(given);
    const found = done(checked);
    expect(found.report.seen.map(({ id }) => id)).toEqual(checkLines.map(({ id }) => id));
    expect(
      Object.fromEntries(found.report.seen.map(({ id, colour }) => [id, colour])),
    ).toMatchObject(colours);
    const isOther = (id: LineId): boolean => colours[id] !== undefined && colours[id] !== "green";
    const first = found.report.seen.find(({ id }) => isOther(id));
    if (first) expect(first.words).toMatch(says);
  });

  it("goes on to the last line, whichever part of it fails, and never calls that green", async () => {
    const whole = (await check()).standIn.changes;
    for (const share of [0.005, 0.2, 0.5, 0.8]) {
      const at = Math.ceil(whole * share);
      const { checked } = await check({
        prepare: (standIn) => (standIn.failing = { at, code: "GeneralException", for: 2 }),
      });
      const found = done(checked);
      expect(found.report.seen.map(({ id }) => id)).toEqual(checkLines.map(({ id }) => id));
      expect([share, Object.keys(others(found)).length > 0]).toEqual([share, true]);
    }
  });
});
