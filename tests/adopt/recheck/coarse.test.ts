/**
 * Lye counted in whole cups and spoons, or in halves, thirds and quarters of them: rounded up, down or to
 * the nearest, as people do. What a measure cannot tell is no mistake. Doses by hand (rows.ts).
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { times } from "../../thorough";
import { lyeBook } from "./lye-book";
import { type Given, usual, workRow } from "./rows";

const measures = [
  { unit: "cup", grams: 190 },
  { unit: "tablespoon", grams: 14 },
  { unit: "teaspoon", grams: 4.5 },
] as const;
const roundings = [Math.ceil, Math.floor, Math.round] as const;

interface Counted {
  readonly unit: string;
  readonly grams: number;
  /** Parts of a measure that are told apart. */
  readonly parts: number;
  readonly rounding: (value: number) => number;
}

/** As it is typed: two decimals of a third. */
const countedIn = ({ grams, parts, rounding }: Counted, lye: number): number =>
  Number((rounding((lye / grams) * parts) / parts).toFixed(2));

function bookOf(
  rows: readonly Given[],
  counted: Counted,
  doses: readonly number[],
  isWeighed = false,
): Logbook {
  const last = [
    ...(isWeighed ? ([["catalyst", "g"]] as const) : []),
    [isWeighed ? "weighed" : "catalyst", counted.unit],
  ] as const;
  const { mapping, cells } = lyeBook(rows, last, (row, at) => [
    ...(isWeighed ? [Math.round(workRow(row).total)] : []),
    countedIn(counted, doses[at] ?? 0),
  ]);
  const size = { ask: "size", word: counted.unit, in: "g", size: String(counted.grams) } as const;
  return { cells, mapping: { ...mapping, answers: [size] } };
}

const rowsOf = fc.array(
  fc.record({
    titre: fc.integer({ min: 100, max: 600 }),
    amount: fc.integer({ min: 60, max: 400 }),
  }),
  { minLength: 5, maxLength: 10 },
);
const given = rowsOf.map((all) =>
  all.map(({ titre, amount }): Given => ({ ...usual, titres: [titre / 100], amount })),
);
const way = fc.record({
  measure: fc.constantFrom(...measures),
  parts: fc.constantFrom(1, 2, 3, 4),
  rounding: fc.constantFrom(...roundings),
});

describe("a dose in cups or spoons", () => {
  it("that differs by no more than one of its steps is accused of nothing, and that is said", () => {
    fc.assert(
      fc.property(given, way, fc.boolean(), (rows, { measure, parts, rounding }, isWeighed) => {
        const counted = { ...measure, parts, rounding };
        const doses = rows.map((row) => workRow(row).total);
        const report = recheckAtOnce([bookOf(rows, counted, doses, isWeighed)]);
        expect(report.findings).toEqual([]);
        expect(report.taken.join()).toContain("one step of its measure: it cannot tell less");
      }),
      { numRuns: times(40) },
    );
  });

  it("that is beyond a step is told: teaspoons without the tenth that the assay asks for", () => {
    const counted = { unit: "teaspoon", grams: 4.5, parts: 1, rounding: Math.round };
    const rows = [120, 150, 90, 200, 110].map((amount) => ({ ...usual, titres: [5.2], amount }));
    const doses = rows.map((row, at) => workRow(row, at === 2 ? { assay: 1 } : {}).total);
    const { findings } = recheckAtOnce([bookOf(rows, counted, doses)]);
    expect(findings.map(({ row, mistake }) => [row, mistake])).toEqual([[3, "assay-not-applied"]]);
  });

  it("that fits several mistakes alike is given none of them: whole cups", () => {
    const counted = { unit: "cup", grams: 190, parts: 1, rounding: Math.round };
    const rows = [120, 150, 90, 200, 110].map((amount) => ({ ...usual, titres: [5.2], amount }));
    // by hand: of 2100 g NaOH's figures make 1500 g, and multiplying by the assay 1700 g: 8 cups of 190 g are either
    const doses = rows.map((row, at) => workRow(row).total - (at === 3 ? 585 : 0));
    const { findings } = recheckAtOnce([bookOf(rows, counted, doses)]);
    expect(findings.map(({ row, mistake }) => [row, mistake])).toEqual([[4, "not-recognised"]]);
  });
});
