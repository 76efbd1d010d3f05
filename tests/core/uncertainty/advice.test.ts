import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { adviceInWords, bestChange, changes } from "../../../src/core/uncertainty/advice";
import { benchFigures } from "../../../src/core/uncertainty/bench";
import { expand } from "../../../src/core/uncertainty/expanded";
import { anyBench, figures, fryerOil, type Plain, titration } from "./benches";

const advice = (plain: Plain): string => adviceInWords(bestChange(figures(plain)));
const open = (plain: Plain): string[] => changes(figures(plain)).map((change) => change.words);

describe("the advice on what to improve first", () => {
  it("names the balance where the balance is the doubt", () => {
    expect(advice({ ...fryerOil, massStep: 1 })).toMatch(
      /^A 0\.1 g balance would bring ±\d\.\d+ to ±\d\.\d+ % FFA; nothing else helps as much\.$/,
    );
  });

  it("names the burette where only the graduation is left", () => {
    const words = advice({ ...fryerOil, titres: [2.4, 2.4], blanks: [], titreStep: 0.1 });
    expect(words).toMatch(/^A burette read to 0\.05 mL/);
  });

  it("names one more blank where a single blank carries the scatter", () => {
    expect(advice(fryerOil)).toMatch(/^One more blank would bring ±0\.102 to ±0\.063 % FFA/);
  });

  it("names one more titre for two titres and a neutralised solvent", () => {
    expect(advice({ ...fryerOil, blanks: [], titres: [2.4, 2.5] })).toMatch(/^One more titre/);
  });

  it("names the titrant where its strength is the doubt", () => {
    const plain = { ...fryerOil, titres: [24.45, 24.46, 24.45, 24.46], molarityPercent: 10 };
    // KHP for 25 mL of 0.1 mol/L: 0.51056 g. By hand, 1.96 sqrt(0.01^2/6/0.51056^2 + 0.01^2/3/25^2 + 0.0005^2/3).
    expect(advice({ ...plain, titreStep: 0.01 })).toMatch(/^A titrant standardised to ±1\.6 % on/);
    const fine = { ...plain, titreStep: 0.01, massStep: 0.0001 };
    expect(advice(fine)).toMatch(/^A titrant standardised to ±0\.074 % on/);
  });

  it("names ten times the sample for a millilitre of oil by syringe", () => {
    const syringe = { ...fryerOil, masses: [0.915], molarity: 0.0178, samplePercent: 5 };
    expect(advice(syringe)).toMatch(/^Ten times the sample \(9\.15 g\)/);
  });

  it("names a balance and a mass by four digits, as a label has them", () => {
    const words = open({ ...fryerOil, masses: [1.23456], massStep: 0.123456, titres: [2.4, 2.5] });
    expect(words).toContain("a 0.01235 g balance");
    expect(words).toContain("ten times the sample (12.35 g)");
  });

  /** What each change changes, by hand. */
  const changed = (plain: Plain): Record<string, object> => {
    const bench = figures(plain) as unknown as Record<string, unknown>;
    return Object.fromEntries(
      changes(figures(plain)).map((change) => [
        change.words,
        Object.fromEntries(Object.entries(change.bench).filter(([key, to]) => bench[key] !== to)),
      ]),
    );
  };

  it("works out each change by itself", () => {
    const bench = { ...fryerOil, masses: [5], samplePercent: 2, molarityPercent: 10 };
    expect(changed(bench)).toEqual({
      "a 0.001 g balance": { massStep: 0.001 },
      "a burette read to 0.025 mL": { titreStep: 0.025 },
      "one more titre": { titres: 4, freedom: 3 },
      "one more blank": { blanks: 2, freedom: 3 },
      "ten times the sample (50 g)": {
        sampleMass: 50,
        netTitre: 23,
        titre: 23.15,
        samplePercent: 0.2,
      },
      "a titrant standardised to ±1.6 % on this balance": {
        molarityPercent: expect.closeTo(1.6, 1),
      },
    });
    // a sample weighed for each titre is weighed once more; a blank needs none
    const own = changed({ ...bench, masses: [5, 5, 5] });
    expect(own["one more titre"]).toEqual({ titres: 4, freedom: 3, weighings: 4 });
    expect(own["one more blank"]).toEqual({ blanks: 2, freedom: 3 });
  });

  it("fills a burette of 50 mL to its last mark", () => {
    const large = { ...fryerOil, masses: [1], titres: [5.9, 5.9], blanks: [1] };
    expect(open(large).join()).toContain("ten times the sample");
    expect(open({ ...large, titres: [5.9, 5.901] }).join()).not.toContain("ten times");
  });

  it("calls a twentieth of the uncertainty worth it, and less than that not", () => {
    const change = { words: "a 0.01 g balance", before: 100 };
    expect(adviceInWords({ ...change, after: 95 })).toMatch(/^A 0\.01 g balance/);
    expect(adviceInWords({ ...change, after: 95.01 })).toMatch(/^Nothing alone helps much/);
  });

  it("never asks for more oil than a method takes or a burette can titrate", () => {
    expect(open({ ...fryerOil, masses: [5.64] }).join()).toContain("ten times the sample");
    expect(open({ ...fryerOil, masses: [5.65] }).join()).not.toContain("ten times the sample");
    const large = { ...fryerOil, masses: [1], titres: [5.1, 5.2], molarity: 0.01 };
    expect(open(large).join()).not.toContain("ten times the sample");
  });

  it("offers no blank where the solvent was neutralised, and no standardising of a known titrant", () => {
    const words = open({ ...fryerOil, blanks: [], molarityPercent: 0.1 }).join();
    expect(words).not.toContain("blank");
    expect(words).not.toContain("titrant");
  });

  it("says so where nothing alone helps much", () => {
    const steady = { ...fryerOil, titres: Array<number>(50).fill(24.5), blanks: [] };
    const words = advice({ ...steady, molarityPercent: 0, samplePercent: 5, titreStep: 0.001 });
    expect(words).toMatch(/^Nothing alone helps much: even /);
  });

  it("never names a change that makes things worse, and is one short sentence", () => {
    fc.assert(
      fc.property(anyBench, (plain) => {
        const bench = figures(plain);
        const best = bestChange(bench);
        expect(best.before).toBe(expand(bench).halfWidth);
        expect(best.after).toBeLessThanOrEqual(best.before);
        for (const change of changes(bench)) {
          expect(best.after).toBeLessThanOrEqual(expand(change.bench).halfWidth);
        }
        const words = adviceInWords(best);
        expect(words.length).toBeLessThanOrEqual(200);
        expect(words).toMatch(/^[A-Z].*\.$/);
        expect(words).not.toMatch(/NaN|Infinity|undefined|e-/);
      }),
    );
  });

  it("shows two digits of the smaller figure, also where the second is 0", () => {
    const said = (before: number, after: number) => adviceInWords({ words: "x", before, after });
    expect(said(0.06, 0.05)).toMatch(/±0\.060 to ±0\.050/);
    expect(said(0.0612, 0.0512)).toMatch(/±0\.061 to ±0\.051/);
    expect(said(6, 5)).toMatch(/±6\.0 to ±5\.0/);
  });

  it("weighs one more sample with one more titre, where each has its own, of two as well", () => {
    const weighings = (masses: number[]) =>
      changes(figures({ ...fryerOil, titres: [2.4, 2.5], masses })).find(({ words }) =>
        words.startsWith("one more titre"),
      )?.bench.weighings;
    expect([weighings([7.05]), weighings([7.05, 7.06])]).toEqual([1, 3]);
  });

  it("knows how much of its freedom is the record's", () => {
    const usual = { scatter: 0.05, freedom: 20 };
    const found = benchFigures({ ...titration(fryerOil), usual });
    if (isProblem(found)) throw new Error("no figures");
    // two of the titres, none of a single blank
    expect([found.usualFreedom, found.freedom]).toEqual([20, 22]);
  });
});
