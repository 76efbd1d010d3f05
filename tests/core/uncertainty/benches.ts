/** Titrations for the tests of uncertainty. */
import fc from "fast-check";
import { isProblem } from "../../../src/core/problem/problem";
import { quantity } from "../../../src/core/quantity/quantity";
import { oleic } from "../../../src/core/reference/fatty-acids";
import {
  benchFigures,
  type BenchFigures,
  type Titration,
} from "../../../src/core/uncertainty/bench";

const mL = (value: number | string) => quantity("mL", value);
const g = (value: number | string) => quantity("g", value);

/** A titration in plain figures. */
export interface Plain {
  titres: number[];
  blanks: number[];
  molarity: number;
  /** One for all, or one for each. */
  masses: number[];
  titreStep: number;
  massStep: number;
  molarityPercent: number;
  samplePercent: number;
}

export const fryerOil: Plain = {
  titres: [2.4, 2.5, 2.45],
  blanks: [0.15],
  molarity: 0.1,
  masses: [7.05],
  titreStep: 0.05,
  massStep: 0.01,
  molarityPercent: 0.5,
  samplePercent: 0,
};

const percent = (value: number) => (value === 0 ? undefined : quantity("%", value));

export const titration = (plain: Plain): Titration => ({
  replicates: plain.titres.map((titre, place) => [
    mL(titre),
    g(plain.masses[place] ?? plain.masses[0] ?? 0),
  ]),
  blanks: plain.blanks.map(mL),
  molarity: quantity("mol/L", plain.molarity),
  acid: oleic,
  titreStep: mL(plain.titreStep),
  massStep: g(plain.massStep),
  hasOwnMasses: plain.masses.length > 1,
  molarityPercent: percent(plain.molarityPercent),
  samplePercent: percent(plain.samplePercent),
});

/** The figures of a titration that is known to be good. */
export function figures(plain: Plain): BenchFigures {
  const found = benchFigures(titration(plain));
  if (isProblem(found)) throw new Error(JSON.stringify(found.fields));
  return found;
}

const hundredths = (from: number, to: number) =>
  fc.integer({ min: from, max: to }).map((n) => n / 100);

/** Any sensible bench: titres well above the blanks, with or without blanks and own masses. */
export const anyBench: fc.Arbitrary<Plain> = fc
  .record({
    titres: fc.array(hundredths(150, 1000), { minLength: 2, maxLength: 6 }),
    blanks: fc.array(hundredths(1, 60), { maxLength: 4 }),
    molarity: hundredths(2, 50),
    mass: hundredths(500, 3000),
    hasOwnMasses: fc.boolean(),
    titreStep: fc.constantFrom(0.01, 0.02, 0.05, 0.1),
    massStep: fc.constantFrom(0.001, 0.01, 0.1, 1),
    molarityPercent: fc.constantFrom(0, 0.1, 0.5, 2, 10),
    samplePercent: fc.constantFrom(0, 1, 5),
  })
  .map(({ mass, hasOwnMasses, ...rest }) => ({
    ...rest,
    masses: hasOwnMasses ? rest.titres.map((_, place) => mass + place / 100) : [mass],
  }));
