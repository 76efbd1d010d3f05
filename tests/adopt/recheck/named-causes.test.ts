/** Mistakes of the trade by their names, in rows worked out by hand, and what no row is accused of. */
import { describe, expect, it } from "vitest";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { causeWords } from "../../../src/adopt/recheck/reporting/cause-words";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { bareLogbook, typedConstants } from "./bare-logbook";

type Row = readonly LogbookValue[];

const withConstants = (
  book: ReturnType<typeof bareLogbook>,
  constants: readonly (readonly ["blank" | "baseCharge" | "assay" | "base", string, string?])[],
) => ({
  ...book,
  mapping: {
    ...book.mapping,
    constants: typedConstants(constants),
  },
});

/** Titrations of 10 g with 0.1 mol/L: the acid value is 0.561 times the net titre, % FFA 0.282 times. */
const titrations = (rows: readonly Row[]) =>
  bareLogbook(
    [
      ["lot", undefined],
      ["titre", "mL"],
      ["titre", "mL"],
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleMass", "g"],
      ["molarity", "mol/L"],
      ["ffa", "%"],
    ],
    rows,
  );

const causes = (book: ReturnType<typeof bareLogbook>) =>
  recheckAtOnce([book]).findings.map(({ row, mistake, should }) => [row, mistake, should]);

describe("a known mistake of the trade", () => {
  it("best two of three is a titre left out of the mean", () => {
    // Net 5.0, 5.1 and 6.1: all three 5.4, 1.523 %; the two that agree 5.05, 1.424 %.
    const book = titrations([["A", 5.2, 5.3, 6.3, 0.2, 10, 0.1, 1.424]]);
    expect(causes(book)).toEqual([[1, "titre-left-out", "1.523"]]);
  });

  it("an acid value in the column of % FFA is told from two mistakes at once", () => {
    // Net 5: acid value 2.805, 1.41 %.
    const book = titrations([["A", 5.2, 5.2, 5.2, 0.2, 10, 0.1, 2.805]]);
    expect(causes(book)).toEqual([[1, "acid-value-as-percent", "1.410"]]);
  });

  it("a point that slipped, and a figure copied from above, are named", () => {
    const book = titrations([
      ["A", 5.2, 5.2, 5.2, 0.2, 10, 0.1, 14.1],
      ["B", 7.2, 7.2, 7.2, 0.2, 10, 0.1, 14.1],
    ]);
    expect(causes(book).map(([row, mistake]) => [row, mistake])).toEqual([
      [1, "decimal-slip"],
      [2, "copied-from-above"],
    ]);
  });

  it("figures of NaOH for KOH are one base for another, charge and all", () => {
    const doses = bareLogbook(
      [
        ["ffa", "%"],
        ["oilAmount", "kg"],
        ["catalyst", "g"],
      ],
      // 100 kg of 2 %: 283.2 g of NaOH for the acid, 570 g (0.8 % of KOH is 0.57 % of NaOH), 90 %.
      [[2, 100, 948]],
    );
    const book = withConstants(doses, [
      ["base", "KOH"],
      ["assay", "90", "%"],
      ["baseCharge", "0.8", "%"],
    ]);
    // KOH: 397.9 g and 800 g, 90 %.
    expect(causes(book)).toEqual([[1, "other-base", "1331"]]);
    expect(recheckAtOnce([book]).findings.map(causeWords)).toEqual([
      "Another base's figure: that of NaOH, and KOH is weighed out",
    ]);
  });

  it("the coefficient of another base is named where the maker works by coefficients", () => {
    // 100 kg with 0.8 % of KOH, 90 %; 0.197 g of KOH for each g of acid, and once the 0.144 g of NaOH.
    const dose = (percent: number, coefficient: number): Row => [
      percent,
      100,
      Number(((1000 * percent * coefficient + 800) / 0.9).toFixed(1)),
    ];
    const doses = bareLogbook(
      [
        ["ffa", "%"],
        ["oilAmount", "kg"],
        ["catalyst", "g"],
      ],
      [
        dose(1.21, 0.197),
        dose(2.93, 0.197),
        dose(2.14, 0.197),
        dose(4.04, 0.144),
        dose(3.37, 0.197),
      ],
    );
    const book = withConstants(doses, [
      ["base", "KOH"],
      ["assay", "90", "%"],
      ["baseCharge", "0.8", "%"],
    ]);
    expect(causes(book).map(([row, mistake]) => [row, mistake])).toEqual([[4, "other-base"]]);
    // 4.04 kg of acid takes 795.9 g, with 800 g for the reaction 1595.9 g, of 90 % 1773.2 g; 282 or 282.5 g/mol
    expect(Math.abs(Number(causes(book)[0]?.[2]) / 1773.2 - 1)).toBeLessThan(0.001);
  });

  it("a figure copied from above is one whether or not it was turned into another unit", () => {
    const book = titrations([
      ["A", 5.2, 5.2, 5.2, 0.2, 10, 0.1, 1.41],
      ["B", 7.2, 7.2, 7.2, 0.2, 10, 0.1, 1.41],
    ]);
    const formulas = book.cells.formulas.map((row, at) =>
      at === 2 ? row.map((each, column) => (column === 7 ? "=0.0141*100" : each)) : row,
    );
    expect(causes({ ...book, cells: { ...book.cells, formulas } })).toEqual([
      [2, "copied-from-above", "1.97"],
    ]);
  });

  it("a batch that took the acid of the lot beside it is accused, a blend is not", () => {
    const log = titrations([
      ["A", 5.2, 5.2, 5.2, 0.2, 10, 0.1, 1.41],
      ["B", 9.2, 9.2, 9.2, 0.2, 10, 0.1, 2.54],
      ["C", 3.2, 3.2, 3.2, 0.2, 10, 0.1, 0.85],
    ]);
    const batches = bareLogbook(
      [
        ["lot", undefined],
        ["ffa", "%"],
      ],
      [
        ["A", 1.41],
        ["B", 0.85],
        ["B", 1.7],
        ["A+B", 1.97],
      ],
    );
    const report = recheckAtOnce([
      log,
      { ...batches, mapping: { ...batches.mapping, sheet: "Batches" } },
    ]);
    expect(report.findings.map(({ row, mistake, should }) => [row, mistake, should])).toEqual([
      [2, "other-lot", "2.54"],
    ]);
  });
});

/** The commonest hobby way: 1 g/L of flake, 1 mL of oil, titre less blank and 5 g for each litre. */
function hobby(rows: readonly (readonly [titre: number, blank: number, rate: number])[]) {
  const book = bareLogbook(
    [
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleVolume", "mL"],
      ["strength", "g/L"],
      ["titrantBase", undefined],
      ["oilAmount", "L"],
      ["base", undefined],
      ["assay", "%"],
      ["baseCharge", "g/L"],
      ["catalystRate", "g/L"],
    ],
    rows.map(([titre, blank, rate]) => [titre, blank, 1, 1, "NaOH", 100, "NaOH", 97, 5, rate]),
  );
  const isWeighed = (role: string): boolean => role === "strength" || role === "baseCharge";
  return {
    ...book,
    mapping: {
      ...book.mapping,
      columns: book.mapping.columns.map((each) =>
        isWeighed(each.role) ? { ...each, basis: "as weighed" as const } : each,
      ),
    },
  };
}

describe("a blank that was forgotten", () => {
  it("is noticed where the figures have one decimal", () => {
    const book = hobby([
      [2.3, 0.1, 7.2],
      [1.6, 0.1, 6.5],
      [3.1, 0.1, 8],
      [2.9, 0.1, 7.8],
      // 2.4 less 0.1 and 5 is 7.3.
      [2.4, 0.1, 7.4],
    ]);
    expect(causes(book)).toEqual([[5, "blank-not-subtracted", "7.30"]]);
  });

  it("in most rows is no density of the maker's: what should be there stays what it is", () => {
    const book = hobby([
      [2.45, 0.1, 7.35],
      [2.4, 0.15, 7.4],
      [2.45, 0.15, 7.45],
      [2.45, 0.2, 7.45],
      [2.4, 0.3, 7.4],
      [2.45, 0.3, 7.45],
      [1.55, 0.1, 6.55],
    ]);
    expect(causes(book)).toEqual([
      [2, "blank-not-subtracted", "7.25"],
      [3, "blank-not-subtracted", "7.30"],
      [4, "blank-not-subtracted", "7.25"],
      [5, "blank-not-subtracted", "7.10"],
      [6, "blank-not-subtracted", "7.15"],
      [7, "blank-not-subtracted", "6.45"],
    ]);
  });
});

describe("a column that agrees with its readings in hardly any row", () => {
  it("is asked about, and no row is accused of it", () => {
    const rates = [11.3, 9.1, 14.2, 12.7, 10.2, 13.9];
    const book = hobby(rates.map((rate, at) => [2 + at / 10, 0.1, rate]));
    const report = recheckAtOnce([book]);
    expect(report.findings).toEqual([]);
    expect(report.unchecked.map(({ why, rows }) => [why, rows.length])).toEqual([
      [
        "catalystRate, since it agrees with its readings in hardly any row: look at what the column is, at its unit and at the figures for all rows",
        6,
      ],
    ]);
  });
});

describe("no word of the blank at all", () => {
  const book = bareLogbook(
    [
      ["titre", "mL"],
      ["sampleMass", "g"],
      ["molarity", "mol/L"],
      ["ffa", "%"],
    ],
    [[5, 10, 0.1, 1.41]],
  );

  it("is not taken for a neutralised solvent", () => {
    const report = recheckAtOnce([book]);
    expect(report.rows).toBe(0);
    expect(report.unchecked.map(({ why }) => why)).toEqual(["what the blank took is not said"]);
  });

  it("is settled by a typed 0", () => {
    const report = recheckAtOnce([withConstants(book, [["blank", "0", "mL"]])]);
    expect([report.rows, report.findings, report.unchecked]).toEqual([1, [], []]);
  });
});
