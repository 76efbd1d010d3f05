import { describe, expect, it } from "vitest";
import { call, figure } from "../outcome";

const table = (id: string, ...given: unknown[]): unknown[][] => {
  const seen = call(id, ...given);
  if ("value" in seen && Array.isArray(seen.value)) return seen.value;
  throw new Error(`${id} gave ${JSON.stringify(seen)}`);
};

const fryerOil = [[[2.4, 2.5, 2.45]], [[0.15]], 0.1, [[7.05]], 0.05, 0.01, 0.5] as const;

describe("BUDGET", () => {
  const rows = table("BUDGET", ...fryerOil);
  const column = (place: number): number[] => rows.slice(1, 8).map((row) => Number(row[place]));

  it("has a heading, the seven sources, the two parts, the whole and the advice, all six wide", () => {
    expect(rows.map((row) => row[0])).toEqual([
      "source",
      "titre scatter",
      "blank scatter",
      "titre reading",
      "blank reading",
      "titrant",
      "weighing",
      "sample by volume",
      "scatter part, and its t",
      "rest, and its factor",
      "FFA, and its expanded uncertainty",
      "the step that would lower it most",
    ]);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([6]));
  });

  it("shares out 100 % of the variance, to the sources and to the two parts alike", () => {
    const total = (shares: number[]): number => shares.reduce((sum, share) => sum + share, 0);
    expect(total(column(5))).toBeCloseTo(100, 10);
    expect(total([Number(rows[8]?.[5]), Number(rows[9]?.[5])])).toBeCloseTo(100, 10);
  });

  it("ends in the figure FFAUNCERTAINTY gives, and in the % FFA", () => {
    expect(rows[10]?.[4]).toBe(figure("FFAUNCERTAINTY", ...fryerOil));
    expect(rows[10]?.[1]).toBeCloseTo(0.92, 12);
  });

  it("says neutralised where there is no blank", () => {
    const neutral = table("BUDGET", [[2.4, 2.5]], "neutralised", 0.1, [[7.05]], 0.05, 0.01);
    expect(neutral[2]?.slice(0, 4)).toEqual(["blank scatter", "neutralised", "mL", 0]);
    // the shade it was brought to is read twice, as a blank is: 0.05/sqrt(6)
    expect(neutral[4]?.slice(0, 3)).toEqual(["blank reading", "neutralised", "mL"]);
    expect(neutral[4]?.[3]).toBeCloseTo(0.020412414523193, 14);
  });

  it("is #N/A for one titre, as FFAUNCERTAINTY is", () => {
    for (const id of ["BUDGET", "FFAUNCERTAINTY"]) {
      const seen = call(id, [[2.4]], [[0.15]], 0.1, [[7.05]], 0.05, 0.01);
      expect(seen).toMatchObject({ error: "#N/A" });
    }
  });
});

describe("CHECKS", () => {
  const rows = table("CHECKS");

  it("lists fifteen checks or more, each with its source, and all agree", () => {
    expect(rows[0]).toEqual(["check", "source", "expected", "computed here", "agrees"]);
    expect(rows.length).toBeGreaterThan(15);
    for (const [check, source, expected, ours, agrees] of rows.slice(1)) {
      expect(String(source).length, String(check)).toBeGreaterThan(10);
      expect(typeof expected).toBe("number");
      expect(typeof ours).toBe("number");
      expect(agrees, `${String(check)}: ${String(expected)}, here ${String(ours)}`).toBe(true);
    }
  });

  it("names no check twice", () => {
    const names = rows.map((row) => row[0]);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe("BUDGET beyond what doubles can be divided by", () => {
  it("says that the result is too large, and never throws", () => {
    const masses = [[4.7e-322, 999.999999999, 3.132846e-318]];
    const titres = [[1000, 1000, 999.999999999]];
    expect(call("BUDGET", titres, [[0.15]], 5e-324, masses, 5e-324, 10)).toEqual({
      error: "#VALUE!",
      message: "The result is too large for a cell: check the units and the size of each argument.",
    });
  });
});
