import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { combined } from "../../../src/core/uncertainty/combine";
import { asFfa, contributions } from "../../../src/core/uncertainty/contributions";
import { anyBench, figures, fryerOil, type Plain } from "./benches";

/** The percentage by the textbook formula, in plain doubles, with oleic acid at 282 g/mol. */
function ffa({ titres, blanks, molarity, masses }: Plain): number {
  const mean = (values: readonly number[]): number =>
    values.reduce((total, each) => total + each, 0) / values.length;
  const blank = blanks.length > 0 ? mean(blanks) : 0;
  const perGram = titres.map((titre, place) => (titre - blank) / (masses[place] ?? masses[0] ?? 0));
  return (molarity * mean(perGram) * 282) / 10;
}

/** Central difference: the same shift up and down. */
const slope = (at: (shift: number) => Plain, size: number): number =>
  (ffa(at(size)) - ffa(at(-size))) / (2 * size);

const small = 1e-5;
const byTitre = (plain: Plain): number =>
  slope((d) => ({ ...plain, titres: plain.titres.map((v) => v + d) }), small);
const byBlank = (plain: Plain): number =>
  slope((d) => ({ ...plain, blanks: plain.blanks.map((v) => v + d) }), small);
const byMolarity = (plain: Plain): number =>
  slope((d) => ({ ...plain, molarity: plain.molarity + d }), small);
const byMass = (plain: Plain): number =>
  slope((d) => ({ ...plain, masses: plain.masses.map((v) => v + d) }), small);

const near = (ours: number, theirs: number, relative: number): void => {
  expect(Math.abs(ours - theirs), `got ${ours}, expected ${theirs}`).toBeLessThanOrEqual(
    relative * Math.abs(theirs),
  );
};

describe("the sensitivity of the % FFA to each quantity", () => {
  it("is its numerical derivative, for every bench", () => {
    fc.assert(
      fc.property(anyBench, (plain) => {
        // Samples weighed one by one differ by a hundredth or so: the mean mass stands for each.
        const within = plain.masses.length > 1 ? 0.02 : 1e-7;
        const numerical = {
          "titre scatter": byTitre(plain),
          "titre reading": byTitre(plain),
          "blank scatter": byBlank(plain),
          "blank reading": byBlank(plain),
          titrant: byMolarity(plain),
          weighing: byMass(plain),
          "sample by volume": byMass(plain),
        } as Record<string, number>;
        for (const part of contributions(figures(plain))) {
          expect(part.value === undefined).toBe(
            plain.blanks.length === 0 && part.source.startsWith("blank"),
          );
          if (part.value === undefined) continue;
          near(part.perUnit, numerical[part.source] ?? Number.NaN, within);
        }
      }),
    );
  });

  it("is taken at the % FFA of the formula", () => {
    fc.assert(
      fc.property(anyBench, (plain) => {
        near(figures(plain).ffa, ffa(plain), 1e-12);
      }),
    );
  });
});

describe("the contributions", () => {
  it("stand in the order of the budget", () => {
    expect(contributions(figures(fryerOil)).map((part) => part.source)).toEqual([
      "titre scatter",
      "blank scatter",
      "titre reading",
      "blank reading",
      "titrant",
      "weighing",
      "sample by volume",
    ]);
  });

  it("name the quantity that each doubts, with its unit", () => {
    const parts = contributions({ ...figures(fryerOil), burettePercent: 1 });
    // by hand: the titres have a mean of 2.45, less a blank of 0.15
    expect(parts.map(({ value, unit }) => `${String(value)} ${unit}`)).toEqual([
      "2.45 mL",
      "0.15 mL",
      "2.45 mL",
      "0.15 mL",
      "0.1 mol/L",
      "7.05 g",
      "7.05 g",
      "2.3 mL",
    ]);
    expect(parts.map(({ isScatter }) => isScatter)).toEqual([
      true,
      true,
      ...Array<boolean>(6).fill(false),
    ]);
    expect(parts[7]?.source).toBe("burette");
    expect(parts[7]?.standard).toBeCloseTo(0.023 / Math.sqrt(3), 14);
  });

  it("of the fryer oil are those worked by hand", () => {
    const standard = contributions(figures(fryerOil)).map((part) => part.standard);
    const byHand = [
      0.05 / Math.sqrt(3),
      0.05,
      0.05 / Math.sqrt(6),
      0.05 / Math.sqrt(6),
      0.0005 / Math.sqrt(3),
      0.01 / Math.sqrt(6),
      0,
    ];
    for (const [place, expected] of byHand.entries()) {
      expect(standard[place]).toBeCloseTo(expected, 14);
    }
  });

  it("pool the scatter of titres and blanks: one bench hand", () => {
    const bench = figures({ ...fryerOil, blanks: [0.1, 0.2] });
    // By hand: (2 x 0.05^2 + 0.005) / 3
    expect(bench.freedom).toBe(3);
    expect(bench.scatter).toBeCloseTo(Math.sqrt((0.005 + 0.005) / 3), 14);
  });

  it("of a neutralised solvent have no blank, but the shade that was read for it", () => {
    const parts = contributions(figures({ ...fryerOil, blanks: [] }));
    const blanks = parts.filter((part) => part.source.startsWith("blank"));
    expect(blanks.map((part) => [part.value, part.standard])).toEqual([
      [undefined, 0],
      [undefined, fryerOil.titreStep / Math.sqrt(6)],
    ]);
  });

  it("count a weighing once for one mass, and divide it by n when each sample is weighed", () => {
    const one = figures({ ...fryerOil, masses: [7.05] });
    const each = figures({ ...fryerOil, masses: [7.05, 7.05, 7.05] });
    const weighing = (bench: typeof one): number =>
      contributions(bench).find((part) => part.source === "weighing")?.standard ?? 0;
    expect(weighing(one) / weighing(each)).toBeCloseTo(Math.sqrt(3), 12);
  });

  it("are exactly 0 for equal titres, whatever the blank", () => {
    const equal = { ...fryerOil, titres: [2.45, 2.45, 2.45], blanks: [0.13, 0.13, 0.13] };
    expect(figures(equal).scatter).toBe(0);
    expect(figures({ ...equal, masses: [7.01, 7.01, 7.01] }).scatter).toBe(0);
    const scatter = contributions(figures(equal)).filter((part) => part.isScatter);
    expect(combined(scatter.map(asFfa))).toBe(0);
  });
});
