/** The host's own calls through the program's own client: it knows its members, and what a request weighs. */
import { afterEach, describe, expect, it } from "vitest";
import { ExcelHost } from "../../src/host/excel";
import {
  type Block,
  type Content,
  type Found,
  type Host,
  isFault,
  type Question,
  type Step,
} from "../../src/sheet/port";
import { readLots } from "../../src/workbook/planning/read-lots";
import { titrations } from "../../src/workbook/tables/titrations";
import { mostBytes } from "./excel/request-size";
import { ExcelStandIn, installExcel } from "./excel/stand-in";
import { memoryBook } from "./open-memory";
import { type Held, installProgram, type Sent } from "./vendor/program";

/** The ExcelApi that the manifest asks for, behind its 1 and the point. */
const askedFor = 13;

const columns = 40;
const rows = 20_000;

/** A logbook as somebody keeps it for years: words, figures, and the formulas of our own table. */
const logbook: Held = {
  rows: rows + 1,
  columns,
  value: (row, column) => {
    if (row === 0) return titrations.columns[column]?.heading ?? `Column ${String(column)}`;
    return column % 4 === 1 ? `Lot NQ-${String(row)}` : (row * 31 + column * 7) / 1024;
  },
  formula: (row, column) => (row > 0 ? (titrations.columns[column]?.formula ?? "") : ""),
};

const block = (row: number, column: number, high: number, wide: number): Block => ({
  sheet: "Log",
  row,
  column,
  rows: high,
  columns: wide,
});
const whole = block(0, 0, rows + 1, columns);

const most = (sent: readonly Sent[], which: "asked" | "answered"): number =>
  Math.max(...sent.map((each) => each[which]));

async function reading(host: Host, question: Question): Promise<Found> {
  const found = await host.read([question]);
  if (isFault(found)) throw new Error(found.code);
  return found[0] ?? { kind: "nothing" };
}

afterEach(() => {
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

describe("every step and every question of the host", () => {
  const at = block(1, 1, 1, 1);
  const all: Record<Step["do"], Step> = {
    "add-sheet": { do: "add-sheet", name: "More" },
    "set-cells": {
      do: "set-cells",
      block: block(1, 0, 1, 3),
      contents: [
        [
          { kind: "value", value: "=A", format: "0.0", style: "large" },
          { kind: "keep" },
          { kind: "formula", formula: "=1+1", style: "heading" },
        ],
      ],
    },
    "add-table": { do: "add-table", name: "Gauge", block: whole },
    "grow-table": { do: "grow-table", name: "Log", block: whole },
    "set-width": { do: "set-width", sheet: "Log", column: 1, characters: 12 },
    "freeze-rows": { do: "freeze-rows", sheet: "Log", rows: 1 },
    "add-note": { do: "add-note", block: at, text: "Litres." },
    "offer-words": { do: "offer-words", block: at, words: ["low", "high"] },
    "add-chart": {
      do: "add-chart",
      sheet: "Log",
      kind: "lines",
      title: "='Log'!$A$1",
      acrossTitle: "='Log'!$A$2",
      upTitle: "Litres",
      across: block(1, 0, 3, 1),
      lines: [
        { name: "one", values: block(1, 1, 3, 1) },
        { name: "two", values: block(1, 2, 3, 1) },
      ],
      place: block(6, 0, 9, 4),
    },
    "print-area": { do: "print-area", block: whole, landscape: true, secondPage: 9 },
    select: { do: "select", block: at },
  };

  it.each(Object.values(all).map((step) => [step.do, step] as const))(
    "%s is made of members that an ExcelApi 1.13 has",
    async (_, step) => {
      const sent = installProgram(logbook, askedFor);
      expect(await new ExcelHost().write("Test", [step])).toBeUndefined();
      expect(sent.length).toBeGreaterThan(0);
    },
  );

  it("what it can is asked with members that an ExcelApi 1.13 has", async () => {
    installProgram(logbook, askedFor);
    expect(await new ExcelHost().capabilities()).toMatchObject({ canWrite: true });
  });

  const questions: Record<Question["ask"], Question> = {
    cells: { ask: "cells", block: at },
    values: { ask: "values", block: at },
    errors: { ask: "errors", sheet: "Log" },
    table: { ask: "table", name: "Log" },
    sheets: { ask: "sheets" },
    names: { ask: "names" },
    selection: { ask: "selection" },
  };

  it.each(Object.values(questions).map((question) => [question.ask, question] as const))(
    "%s is asked with members that an ExcelApi 1.13 has, and nothing is read that was not loaded",
    async (_, question) => {
      installProgram(logbook, askedFor);
      expect((await reading(new ExcelHost(), question)).kind).not.toBe("nothing");
    },
  );
});

describe("a logbook of 20,000 rows and 40 columns", () => {
  it("is read whole, in answers of less than 5 MB", async () => {
    const sent = installProgram(logbook);
    const found = await reading(new ExcelHost(), { ask: "cells", block: whole });
    if (found.kind !== "cells") throw new Error(found.kind);
    expect(most(sent, "answered")).toBeLessThan(mostBytes);
    expect(found.block).toEqual(whole);
    expect([found.values.length, found.formulas.length, found.formats.length]).toEqual(
      Array(3).fill(rows + 1),
    );
    for (const [row, column] of [
      [0, 0],
      [1, 1],
      [999, 27],
      [1000, 39],
      [12_345, 3],
      [rows, 39],
    ] as const) {
      expect(found.values[row]?.[column]).toBe(logbook.value(row, column));
      expect(found.formulas[row]?.[column]).toBe(logbook.formula(row, column));
    }
  });

  it("is read for its lots without a formula and without a format", async () => {
    const sent = installProgram(logbook);
    const lots = await readLots(new ExcelHost());
    expect(lots).toHaveLength(rows);
    expect(most(sent, "answered")).toBeLessThan(mostBytes);
    const loaded = sent.flatMap(({ request }) =>
      request.Actions.flatMap(({ QueryInfo }) => QueryInfo?.Select ?? []),
    );
    expect(loaded).toContain("values");
    expect(loaded).not.toContain("formulas");
    expect(loaded).not.toContain("numberFormat");
  });

  it("is read in smaller pieces where its rows are longer than one would think", async () => {
    const long = `=TITRE.ACIDVALUE(${"A1+".repeat(80)}B1,0.1,10)`;
    const sent = installProgram({ ...logbook, formula: (row) => (row > 0 ? long : "") });
    const part = block(0, 0, 2001, columns);
    const found = await reading(new ExcelHost(), { ask: "cells", block: part });
    if (found.kind !== "cells") throw new Error(found.kind);
    // What was too large was refused, and asked for again in halves.
    expect(most(sent, "answered")).toBeGreaterThan(mostBytes);
    expect(found.formulas.map((row) => row[0])).toEqual(
      Array.from({ length: 2001 }, (_, row) => (row > 0 ? long : "")),
    );
  });
});

describe("what is written", () => {
  const formula = (row: number): Content => ({
    kind: "formula",
    formula: `=TITRE.ACIDVALUE([@[Titre 1 mL]]-[@[Blank 1 mL]],[@[Molarity mol/L]],[@[Sample g]])+0*${String(row)}`,
    format: "0.00",
    style: "calculated",
  });
  const tenThousand = (wide: number): Step => ({
    do: "set-cells",
    block: block(1, columns - wide, 10_000 / wide, wide),
    contents: Array.from({ length: 10_000 / wide }, (_, row) =>
      Array.from({ length: wide }, () => formula(row)),
    ),
  });

  it.each([1, 10, 40])(
    "as 10,000 formulas in %s columns is one request of less than 5 MB",
    async (wide) => {
      const sent = installProgram(logbook);
      expect(await new ExcelHost().write("Test", [tenThousand(wide)])).toBeUndefined();
      expect(most(sent, "asked")).toBeLessThan(mostBytes);
    },
  );

  it("as more than one request takes goes in several, and no single undo is promised", async () => {
    const sent = installProgram(logbook);
    const steps = [10, 10, 10, 10].map(tenThousand);
    expect(await new ExcelHost().write("Test", steps)).toEqual({ kind: "shortfall", missing: [] });
    expect(most(sent, "asked")).toBeLessThan(mostBytes);
  });

  it("as a row of forty cells is one array, with nothing for those that stay", async () => {
    const sent = installProgram(logbook);
    const row = Array.from({ length: columns }, (_, at): Content =>
      at % 2 === 0 ? { kind: "keep" } : { kind: "value", value: at },
    );
    await new ExcelHost().write("Test", [
      { do: "set-cells", block: block(7, 0, 1, columns), contents: [row] },
    ]);
    const set = sent.flatMap(({ request }) =>
      request.Actions.filter(({ ActionType }) => ActionType === 4),
    );
    expect(set).toMatchObject([
      {
        Name: "Formulas",
        ArgumentInfo: {
          Arguments: [[row.map((each) => (each.kind === "value" ? each.value : null))]],
        },
      },
    ]);
  });

  it("is weighed by the stand-in about as the client sends it", async () => {
    const mixed: Step[] = Array.from({ length: 300 }, (_, row): Step[] => [
      {
        do: "set-cells",
        block: block(row, 0, 1, 4),
        contents: [
          [
            { kind: "value", value: `Lot ${String(row)}`, style: "input" },
            { kind: "value", value: 2.45, format: "0.00", style: "calculated" },
            { kind: "keep" },
            formula(row),
          ],
        ],
      },
      { do: "set-width", sheet: "Log", column: row, characters: 12 },
      { do: "offer-words", block: block(row, 1, 1, 1), words: ["low", "high"] },
    ]).flat();
    for (const steps of [mixed, [tenThousand(10)]]) {
      const sent = installProgram(logbook);
      await new ExcelHost().write("Test", steps);
      const standIn = new ExcelStandIn(
        memoryBook({
          name: "test",
          sheets: [{ name: "Log", rows: [], columnWidths: [], tables: [], frozenRows: 0 }],
        }),
      );
      installExcel(standIn);
      expect(await new ExcelHost().write("Test", steps)).toBeUndefined();
      const ratio = standIn.largest / most(sent, "asked");
      expect(ratio).toBeGreaterThan(0.8);
      expect(ratio).toBeLessThan(1.4);
    }
  });
});
