import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Book } from "../../../src/sheet/book";
import { isFault } from "../../../src/sheet/port";
import { keepBench, planBench } from "../../../src/workbook/planning/bench/plan-bench";
import { readBench } from "../../../src/workbook/planning/bench/read-bench";
import { ownLogbook } from "../../../src/workbook/own/own-logbook";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import type { BenchValues } from "../../../src/workbook/tables/bench";
import type { MemoryHost } from "../../host/memory";
import { openMemory } from "../../host/open-memory";

async function kept(host: MemoryHost, values: BenchValues): Promise<void> {
  const plan = await planBench(host, values);
  if (plan.kind !== "plan") throw new Error(plan.sentence);
  const { fingerprint, mustConfirm } = plan;
  const outcome = await keepBench(host, values, { fingerprint, agreed: mustConfirm });
  expect(outcome.kind).toBe("recorded");
  expect(outcome.kind === "recorded" && outcome.differences).toEqual([]);
}

async function readFrom(host: MemoryHost) {
  const found = await readBench(host);
  if (isFault(found)) throw new Error(found.code);
  return found;
}

const said: BenchValues = {
  titrantBase: "NaOH",
  molarity: "0.1",
  titreStep: "0.05",
  base: "KOH",
  assayKOH: "90",
  unit: "US gal",
  amount: "55",
};

/** A logbook of somebody's own whose table Bench was changed by hand. */
function byHand(change: (rows: Record<string, string | number>) => void): Book {
  const book = ownLogbook();
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      if (sheet.name !== "My bench") return sheet;
      const typed: Record<string, string | number> = {};
      change(typed);
      return {
        ...sheet,
        rows: sheet.rows.map((row) => {
          const value = typed[String(row[0]?.value ?? "")];
          return value === undefined ? row : [row[0] ?? null, { value }, ...row.slice(2)];
        }),
      };
    }),
  };
}

describe("my bench", () => {
  it("is nothing in a workbook without its table, and nothing said in a logbook just begun", async () => {
    expect(await readFrom(openMemory(sampleLogbook()))).toBeUndefined();
    expect(await readFrom(openMemory(ownLogbook()))).toEqual({ values: {}, odd: [] });
  });

  it("is written into a logbook just begun and read back as it was said", async () => {
    const host = openMemory(ownLogbook());
    await kept(host, said);
    expect(await readFrom(host)).toEqual({ values: said, odd: [] });
  });

  it("gets a sheet of its own where there is none, and one undo takes it away", async () => {
    const host = openMemory(sampleLogbook());
    await kept(host, said);
    expect(await readFrom(host)).toEqual({ values: said, odd: [] });
  });

  it("says what is written over, and writes nothing where the sheet has changed since", async () => {
    const host = openMemory(ownLogbook());
    await kept(host, said);
    const plan = await planBench(host, { ...said, assayKOH: "85", molarity: "" });
    if (plan.kind !== "plan") throw new Error(plan.sentence);
    expect(plan.remarks.map(({ sentence }) => sentence)).toEqual([
      "Changed for good: Titrant strength 0.1, then empty and Assay of KOH 90, then 85.",
    ]);
    expect(plan.mustConfirm).toEqual([]);
    await kept(host, { ...said, assayKOH: "88" });
    const outcome = await keepBench(
      host,
      { ...said, assayKOH: "85", molarity: "" },
      { fingerprint: plan.fingerprint, agreed: [] },
    );
    expect(outcome.kind).toBe("to-confirm");
    await kept(host, { ...said, assayKOH: "85", molarity: "" });
    const { molarity, ...others } = said;
    expect(molarity).toBe("0.1");
    expect(await readFrom(host)).toEqual({ values: { ...others, assayKOH: "85" }, odd: [] });
  });

  it("says which row holds what no task can begin from, and takes the others", async () => {
    const host = openMemory(
      byHand((rows) => {
        rows["Titrant strength"] = 5.6;
        rows["Assay of KOH"] = "ninety";
        rows["Lye for batches"] = "koh";
        rows["Burette step"] = 0.05;
      }),
    );
    expect(await readFrom(host)).toEqual({
      values: { base: "KOH", titreStep: "0.05" },
      odd: [
        'Titrant strength says "5.6"; it can be a number above 0, up to 2 mol/L.',
        'Assay of KOH says "ninety"; it can be a number above 1, up to 100 %.',
      ],
    });
  });

  it("keeps any figures and words and gives them back, whatever was kept before", async () => {
    const figure = (low: number, high: number) =>
      fc.integer({ min: low * 1000, max: high * 1000 }).map((each) => String(each / 1000));
    const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: "" as const });
    const anything = fc.record({
      titrantBase: maybe(fc.constantFrom("KOH", "NaOH", "KOCH3", "NaOCH3")),
      molarity: maybe(figure(0.001, 2)),
      titreStep: maybe(figure(0.001, 1)),
      assayNaOH: maybe(figure(2, 100)),
      unit: maybe(fc.constantFrom("L", "kg", "US gal", "imperial gal", "lb")),
      amount: maybe(figure(1, 5000)),
      ratio: maybe(figure(3, 15)),
    });
    await fc.assert(
      fc.asyncProperty(anything, anything, async (first, then) => {
        const host = openMemory(ownLogbook());
        await kept(host, first);
        await kept(host, then);
        const filled = Object.fromEntries(Object.entries(then).filter(([, text]) => text !== ""));
        expect(await readFrom(host)).toEqual({ values: filled, odd: [] });
      }),
      { numRuns: 20 },
    );
  });
});
