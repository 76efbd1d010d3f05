import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { blankSeries } from "../../../src/workbook/over-time/blank-series";
import { checkOils, checkOilSeries } from "../../../src/workbook/over-time/check-oil-series";
import { scatterSeries } from "../../../src/workbook/over-time/scatter-series";
import type { Found, Series } from "../../../src/workbook/over-time/series";
import { strengthSeries } from "../../../src/workbook/over-time/strength-series";
import { titrantHistories } from "../../../src/workbook/over-time/titrant-history";
import type { RecordedTitration } from "../../../src/workbook/planning/read-titrations";

interface Row {
  readonly day?: number | undefined;
  readonly lot?: string;
  readonly titres?: readonly number[];
  readonly blanks?: readonly number[];
  readonly molarity?: number;
  readonly step?: number;
  readonly acidValue?: number;
}

const millilitres = (values: readonly number[]) => values.map((value) => quantity("mL", value));

function titration(place: number, row: Row): RecordedTitration {
  const { titres = [2.4, 2.45, 2.4], blanks = [0.15], lot = `L${String(place)}` } = row;
  return {
    day: "day" in row ? row.day : 46_000 + place,
    lot,
    titres: millilitres(titres),
    blanks: millilitres(blanks),
    samples: undefined,
    molarity: quantity("mol/L", row.molarity ?? 0.1),
    titreStep: quantity("mL", row.step ?? 0.05),
    acidValue: row.acidValue,
  };
}

const record = (...rows: readonly Row[]) => rows.map((row, place) => titration(place, row));
const times = (count: number, row: Row = {}): Row[] => Array.from({ length: count }, () => row);

function drawn(found: Found): Series {
  if (found.kind !== "series") throw new Error(found.sentence);
  return found;
}

describe("the scatter of each titration", () => {
  it("is the standard deviation of its titres, against the s chart's limit", () => {
    const series = drawn(scatterSeries(record(...times(6))));
    // By hand: 2.40 2.45 2.40 have 0.05/sqrt 3; the limit is 2.276 times as much.
    const deviation = 0.05 / Math.sqrt(3);
    expect(series.points[0]?.value).toBeCloseTo(deviation, 12);
    expect(series.lines[1]?.values[0]).toBeCloseTo(2.276 * deviation, 4);
    expect(series.sentence).toBe(
      "All 6 titrations scatter as usual (standard deviation 0.029 mL).",
    );
    expect(series.isOdd).toBe(false);
  });

  it("names the last that is above its limit, which does not widen the limit itself", () => {
    const odd = { titres: [2.4, 2.9, 2.4], lot: "SW-18", day: 46_004.5 };
    const series = drawn(scatterSeries(record(...times(4), odd, ...times(3))));
    expect(series.points.map(({ isOut }) => isOut).indexOf(true)).toBe(4);
    // By hand: 2.9 less 2.4; the standard deviation, 0.289, is no distance between titres.
    expect(series.sentence).toBe(
      "SW-18 on 13 Dec 2025: titres 0.50 mL apart, more than your usual. Titrate it again.",
    );
  });

  it("flags each of two wild titrations, which do not hide one another", () => {
    const wild = [
      { titres: [5.2, 5.25, 5.2, 6.1], lot: "SW-18" },
      { titres: [9.11, 8, 8.05], lot: "TW-09" },
    ];
    const series = drawn(scatterSeries(record(...times(6), ...wild)));
    // By hand: the other six have 0.05/sqrt 3.
    expect(series.lines[0]?.values[0]).toBeCloseTo(0.05 / Math.sqrt(3), 12);
    expect(series.points.filter(({ isOut }) => isOut).map(({ of }) => of)).toEqual([
      "SW-18",
      "TW-09",
    ]);
    expect(series.sentence).toContain(
      "2 of 8 titrations scatter more than your usual, the last TW-09",
    );
  });

  it("calls no record usual of which every titration lies too far apart", () => {
    const series = drawn(scatterSeries(record(...times(6, { titres: [2.4, 3.6, 2.4] }))));
    expect(series.points.every(({ isOut }) => isOut)).toBe(true);
  });

  it("says how many more are wanted for a chart", () => {
    const found = scatterSeries(record(...times(3), { titres: [2.4] }));
    expect(found).toMatchObject({
      kind: "too few",
      sentence: "2 more titrations with two titres or more make a chart of the scatter.",
    });
  });

  it("leaves out rows of another method and rows without a date, and says so", () => {
    const found = scatterSeries(
      record({ day: undefined }, { molarity: 0.02 }, { step: 0.01 }, ...times(5)),
    );
    expect(drawn(found).points).toHaveLength(5);
    expect(found.leftOut).toEqual([
      "1 titration without a date is left out.",
      "2 titrations with another burette or a titrant of another strength are left out.",
    ]);
  });
});

describe("the blanks", () => {
  const blanks = (...values: number[]) =>
    blankSeries(record(...values.map((v) => ({ blanks: [v] }))));

  it("are in control in one short sentence", () => {
    const calm = blanks(0.15, 0.1, 0.15, 0.15, 0.1, 0.15, 0.1, 0.15, 0.15, 0.1);
    expect(drawn(calm).sentence).toBe("All 10 blanks are in control.");
    expect(drawn(calm).isOdd).toBe(false);
  });

  it("say that something changed when the last is above the upper limit", () => {
    // Moving ranges by hand: ten of 0 and one of 0.35, sigma 0.35/11 x 0.886 = 0.028, limit near 0.26.
    const jump = blanks(...Array<number>(11).fill(0.15), 0.5);
    expect(drawn(jump).sentence).toBe(
      "The last blank is above the upper limit: something changed.",
    );
    expect(drawn(jump).points.at(-1)).toMatchObject({ isOut: true, said: "beyond limits" });
  });

  it("are taken in the order of time, whatever the order of the rows", () => {
    const found = blankSeries(
      record(
        ...[0.15, 0.1, 0.2, 0.15, 0.1].map((value, place) => ({
          blanks: [value],
          day: 46_010 - place,
        })),
      ),
    );
    expect(drawn(found).points.map(({ value }) => value)).toEqual([0.1, 0.15, 0.2, 0.1, 0.15]);
  });

  it("count each titration once, by the mean of its blanks; a neutralised solvent has none", () => {
    const found = blankSeries(record(...times(5), { blanks: [0.1, 0.2] }, { blanks: [] }));
    expect(drawn(found).points).toHaveLength(6);
    expect(drawn(found).points.at(-1)?.value).toBeCloseTo(0.15, 12);
  });

  it("of fewer than five say how many more are wanted", () => {
    expect(blanks(0.1, 0.15, 0.1, 0.15).sentence).toBe("1 more blank makes a chart.");
  });
});

describe("a kept check oil", () => {
  const kept = (acidValue: number): Row => ({ lot: "CHECK", acidValue });

  it("is a lot titrated five times or more", () => {
    const rows = record(...times(5, kept(1.2)), ...times(4, { lot: "X", acidValue: 1 }));
    expect(checkOils(rows)).toEqual(["CHECK"]);
    expect(drawn(checkOilSeries(rows, "CHECK")).points).toHaveLength(5);
  });

  it("is advised where there is none", () => {
    const found = checkOilSeries(record(...times(4, kept(1))), undefined);
    expect(found.kind).toBe("too few");
    expect(found.sentence).toContain("Keep a litre of one oil");
  });
});

describe("the strength of a titrant", () => {
  const history = (...strengths: number[]) =>
    titrantHistories(
      strengths.map((strength, place) => ({
        titrant: "K-5",
        base: "KOH",
        howKnown: "KHP",
        strength,
        percent: 0.4,
        day: 46_000 + 10 * place,
      })),
    )[0];

  it("has its line through the checks, the band about it, and the day it leaves 1 %", () => {
    const series = drawn(strengthSeries(history(0.1, 0.0998, 0.0996), 46_030));
    // By hand: no scatter, so line and band run through the checks; 0.001 is gone on day 50.
    for (const { values } of series.lines) {
      for (const [place, value] of [0.1, 0.0998, 0.0996].entries()) {
        expect(values[place]).toBeCloseTo(value, 12);
      }
    }
    expect(series.sentence).toBe(
      "Going by its checks, it has lost 0.6 % in 30 days; from 29 Jan 2026 on it is more than 1 % weaker than at first. Today: 0.09940 mol/L ± 0.4 %, as one check has it.",
    );
  });

  it("says how many checks are wanted, and that there is none", () => {
    expect(strengthSeries(history(0.1), 46_001).sentence).toBe("2 more checks of K-5 make a line.");
    expect(strengthSeries(undefined, 46_001).sentence).toContain("No titrant is on record");
  });
});
