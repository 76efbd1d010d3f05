import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { quantity } from "../../../src/core/quantity/quantity";
import { benchFigures } from "../../../src/core/uncertainty/bench";
import { doseHalfWidth } from "../../../src/core/uncertainty/dose-interval";
import { expand } from "../../../src/core/uncertainty/expanded";
import { anyBench, figures, fryerOil, type Plain, titration } from "./benches";

const halfWidth = (plain: Plain): number => expand(figures(plain)).halfWidth;

/** Every titre a tenth farther from their mean: the mean stays, the scatter grows. */
const moreScatter = (plain: Plain): Plain => {
  const mean = plain.titres.reduce((total, each) => total + each, 0) / plain.titres.length;
  return { ...plain, titres: plain.titres.map((titre) => mean + 1.1 * (titre - mean)) };
};

const worse: [string, (plain: Plain) => Plain][] = [
  ["a coarser burette", (p) => ({ ...p, titreStep: p.titreStep * 2 })],
  ["a coarser balance", (p) => ({ ...p, massStep: p.massStep * 2 })],
  ["a titrant known less well", (p) => ({ ...p, molarityPercent: p.molarityPercent + 1 })],
  ["a sample known less well", (p) => ({ ...p, samplePercent: p.samplePercent + 1 })],
  ["more scatter", moreScatter],
];

describe("the expanded uncertainty of the % FFA", () => {
  it("is that of an independent program for the fryer oil", () => {
    expect(halfWidth(fryerOil)).toBeCloseTo(0.10204844027858076, 12);
  });

  it.each(worse)("rises with %s", (_, change) => {
    fc.assert(
      fc.property(anyBench, (plain) => {
        const scattered = new Set(plain.titres).size > 1 && plain.masses.length === 1;
        fc.pre(change !== moreScatter || scattered);
        expect(halfWidth(change(plain))).toBeGreaterThan(halfWidth(plain));
      }),
    );
  });

  it("rises when the blanks scatter", () => {
    const at = (apart: number): number =>
      halfWidth({ ...fryerOil, blanks: [0.2 - apart, 0.2, 0.2 + apart] });
    expect(at(0.02)).toBeGreaterThan(at(0.01));
    expect(at(0.01)).toBeGreaterThan(at(0));
  });

  it("falls when a titre or a blank is added at the same scatter", () => {
    const bench = figures({ ...fryerOil, blanks: [0.15, 0.2] });
    const again = { ...bench, titres: bench.titres + 1, freedom: bench.freedom + 1 };
    const blank = { ...bench, blanks: bench.blanks + 1, freedom: bench.freedom + 1 };
    expect(expand(again).halfWidth).toBeLessThan(expand(bench).halfWidth);
    expect(expand(blank).halfWidth).toBeLessThan(expand(bench).halfWidth);
  });

  it("does not depend on the order of titres, and is always a figure above 0", () => {
    fc.assert(
      fc.property(anyBench, (plain) => {
        const reversed = {
          ...plain,
          titres: [...plain.titres].reverse(),
          masses: [...plain.masses].reverse(),
          blanks: [...plain.blanks].reverse(),
        };
        const one = halfWidth(plain);
        expect(Number.isFinite(one)).toBe(true);
        expect(one).toBeGreaterThan(0);
        expect(halfWidth(reversed) / one).toBeCloseTo(1, 12);
      }),
    );
  });

  it("scales with the strength of the titrant, and not with the size of the unit of volume", () => {
    fc.assert(
      fc.property(anyBench, (plain) => {
        const one = halfWidth(plain);
        expect(halfWidth({ ...plain, molarity: 2 * plain.molarity }) / one).toBeCloseTo(2, 10);
        const tenfold = {
          ...plain,
          titres: plain.titres.map((v) => 10 * v),
          blanks: plain.blanks.map((v) => 10 * v),
          titreStep: 10 * plain.titreStep,
          molarity: plain.molarity / 10,
        };
        expect(halfWidth(tenfold) / one).toBeCloseTo(1, 10);
      }),
    );
  });

  it("cannot be had from one titre, nor from a titre that is not above the blank", () => {
    const codeOf = (plain: Plain): string => {
      const found = benchFigures(titration(plain));
      return isProblem(found) ? found.fields.code : "";
    };
    expect(codeOf({ ...fryerOil, titres: [2.4] })).toBe("too-few");
    expect(codeOf({ ...fryerOil, titres: [2.4, 0.1] })).toBe("titre-below-blank");
    expect(codeOf({ ...fryerOil, titres: [2.4, 0.15] })).toBe("titre-equals-blank");
    expect(codeOf({ ...fryerOil, titres: [900, 901] })).toBe("too-much-acid");
  });

  it("works from 1e-3 to 1e3 mL and for 100 titres", () => {
    const tiny = { ...fryerOil, titres: [0.002, 0.003], blanks: [0.001], titreStep: 0.001 };
    const huge = { ...fryerOil, titres: [999, 1000], molarity: 0.001, masses: [100] };
    const many = { ...fryerOil, titres: Array.from({ length: 100 }, (_, n) => 2 + n / 100) };
    for (const plain of [tiny, huge, many]) {
      expect(Number.isFinite(halfWidth(plain))).toBe(true);
      expect(halfWidth(plain)).toBeGreaterThan(0);
    }
  });

  it("reaches the dose through its acid part: 230 g at 1.0 ± 0.1 % FFA is ± 23 g", () => {
    expect(doseHalfWidth(quantity("g", "230"), 0.1, 1).toNumber()).toBeCloseTo(23, 12);
  });
});
