/**
 * What to improve first, as the function says it and as its twin of plain formulas does, for any bench:
 * the embedded spreadsheet works the twin out, no other program is needed.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/core/problem/problem";
import { functionNamed } from "../../src/functions/catalogue";
import type { BookCell } from "../../src/sheet/book";
import { openHeadless } from "../../src/workbench/engine/node";
import { anyBench, type Plain } from "../core/uncertainty/benches";
import type { RawCell } from "../spreadsheet/twins/raw-book";
import { answerColumn, type Given, write } from "../spreadsheet/twins/written";
import { times } from "../thorough";

const budget = functionNamed("BUDGET");
if (!budget) throw new Error("BUDGET is gone");

const column = (figures: readonly number[]): Given => ({ cells: figures.map((each) => [each]) });
const one = (figure: number): Given => (figure === 0 ? undefined : column([figure]));

const given = (bench: Plain): Given[] => [
  column(bench.titres),
  bench.blanks.length > 0 ? column(bench.blanks) : { literal: "neutralised" },
  one(bench.molarity),
  column(bench.masses),
  one(bench.titreStep),
  one(bench.massStep),
  one(bench.molarityPercent),
  one(bench.samplePercent),
];

const handed = (each: Given): unknown =>
  each === undefined ? null : "cells" in each ? each.cells : "literal" in each && each.literal;

const cell = (raw: RawCell): BookCell | null => {
  if (raw === null) return null;
  return typeof raw === "object" ? { formula: `=${raw.formula}` } : { value: raw };
};

/** The benches of one workbook. */
const several = fc.array(anyBench, { minLength: 6, maxLength: 6 });

describe("the advice as plain formulas", () => {
  it("names the same change, with the same figures, as the function", () =>
    fc.assert(
      fc.asyncProperty(several, async (benches) => {
        const { written, cells, helpers } = write(budget, benches.map(given));
        const sheet = (name: string, rows: RawCell[][]) => ({
          name,
          rows: rows.map((row) => row.map(cell)),
          columnWidths: [],
          tables: [],
          frozenRows: 0,
        });
        const workbook = await openHeadless({
          name: "advice",
          sheets: [sheet("BUDGET", cells), sheet("HBUDGET", helpers)],
        });
        for (const [at, bench] of benches.entries()) {
          const answer: unknown = budget.evaluate(given(bench).map(handed));
          if (isProblem(answer) || !Array.isArray(answer)) throw new Error("no budget");
          const last = answer.length - 1;
          const place = { sheet: "BUDGET", row: (written[at]?.row ?? 0) + last };
          const said = workbook.value({ ...place, column: answerColumn + 1 });
          expect(String(said)).toContain(" would bring ±");
          expect(said, JSON.stringify(bench)).toBe((answer as unknown[][])[last]?.[1]);
        }
        workbook.close();
      }),
      { numRuns: times(2), endOnFailure: true },
    ));
});
