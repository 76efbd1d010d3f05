/** What a published case may ask for: each is worked out by the core from the figures of the case. */
import { readFileSync } from "node:fs";
import { type Exact, exact, hundred } from "../../src/core/exact/exact";
import { mean as exactMean } from "../../src/core/exact/lists";
import { as, quantity } from "../../src/core/quantity/quantity";
import { amountUnitNamed } from "../../src/core/quantity/units";
import { baseNamed } from "../../src/core/reference/bases";
import { oleicAcid, potassiumHydrogenPhthalate } from "../../src/core/reference/compounds";
import { dixonCritical } from "../../src/core/reference/dixon-critical";
import { fattyAcidNamed } from "../../src/core/reference/fatty-acids";
import { molarMass } from "../../src/core/reference/molar-mass";
import { criticalRange } from "../../src/core/replicates/critical-range";
import { deviations, sampleDeviation } from "../../src/core/replicates/deviations";
import { dixonProbabilityOfThree, dixonRatio } from "../../src/core/replicates/dixon";
import {
  farthest,
  grubbsCritical,
  grubbsProbability,
  largestG,
} from "../../src/core/replicates/grubbs";
import { studentT } from "../../src/core/replicates/student-t";
import { acidValue } from "../../src/core/titration/acid-value";
import { acidValueFromFfa, ffaPercent } from "../../src/core/titration/free-fatty-acid";
import { molarityFromPhthalate, temperatureCorrected } from "../../src/core/titration/titrant";
import { batchFunctions } from "./batch-functions";
import { fuelFunctions } from "./fuel-functions";
import { recordFunctions } from "./record-functions";
import { figure, found } from "./figure";
import { combined, effectiveFreedom } from "../../src/core/uncertainty/combine";
import {
  fromInterval95,
  fromLimits,
  fromStep,
  fromTriangle,
  ofMean,
} from "../../src/core/uncertainty/standard-uncertainty";

const exactly = (values: readonly string[]): Exact[] => values.map(exact);

/** Values of a case: written out, in a data file, or by the rule of NIST's NumAcc sets. */
interface Values {
  values?: string[];
  file?: string;
  /** One centre, then so many pairs a tenth below and above it. */
  centre?: string;
  pairs?: number;
}

const valuesOf = ({ values, file, centre, pairs }: Values): Exact[] => {
  if (values) return exactly(values);
  if (file) {
    const text = readFileSync(new URL(`data/${file}`, import.meta.url), "utf8");
    return exactly(text.replace(/^#.*$/gm, "").trim().split(/\s+/));
  }
  const middle = exact(found(centre));
  const pair = [middle.minus("0.1"), middle.plus("0.1")];
  return [middle, ...Array.from({ length: found(pairs) }, () => pair).flat()];
};

const kinds = {
  standard: (size: number) => size,
  limits: fromLimits,
  triangle: fromTriangle,
  interval95: fromInterval95,
  step: fromStep,
};

/** One cause: its size, how it is meant, how often it counts, for the mean of how many. */
interface Cause {
  kind: keyof typeof kinds;
  size: number;
  times?: number;
  meanOf?: number;
}

const standardOf = ({ kind, size, times = 1, meanOf = 1 }: Cause): number =>
  ofMean(kinds[kind](size) * times, meanOf);

const rootSum = (causes: readonly Cause[]): number => combined(causes.map(standardOf));

export const functions = {
  mean: (given: Values) => exactMean(valuesOf(given)).toNumber(),
  deviation: (given: Values) => sampleDeviation(valuesOf(given)),
  deviationOfMean: (given: Values) => {
    const values = valuesOf(given);
    return ofMean(sampleDeviation(values), values.length);
  },
  standardUncertainty: (given: { causes: Cause[] }) => rootSum(given.causes),
  /** A product or quotient: relative uncertainties add as squares. */
  uncertaintyOfProduct: (given: { value: number; factors: { of: number; causes: Cause[] }[] }) =>
    given.value * combined(given.factors.map(({ of, causes }) => rootSum(causes) / of)),
  effectiveFreedom: (given: { parts: { uncertainty: number; freedom: number }[] }) =>
    effectiveFreedom(given.parts),
  /** The same with the combined uncertainty rounded first: a trap. */
  freedomFromRounded: (given: {
    rounded: number;
    parts: { uncertainty: number; freedom: number }[];
  }) => {
    const unrounded = combined(given.parts.map((part) => part.uncertainty));
    return (effectiveFreedom(given.parts) * given.rounded ** 4) / unrounded ** 4;
  },
  wholeFreedom: (given: { parts: { uncertainty: number; freedom: number }[] }) =>
    Math.floor(effectiveFreedom(given.parts)),
  studentT: (given: { outside: number; freedom: number }) => studentT(given.outside, given.freedom),
  plainG: (given: Values) => farthest(deviations(valuesOf(given)), 0).plain,
  grubbsProbability: (given: Values) => {
    const values = valuesOf(given);
    return grubbsProbability(farthest(deviations(values), 0).plain, values.length);
  },
  grubbsCritical: (given: { count: number; alpha: number }) =>
    grubbsCritical(given.count, given.alpha),
  largestG: (given: { count: number }) => largestG(given.count),
  dixonRatio: (given: Values) => dixonRatio(valuesOf(given)).toNumber(),
  dixonProbabilityOfThree: (given: Values) => dixonProbabilityOfThree(dixonRatio(valuesOf(given))),
  dixonCritical: (given: { count: number; at: "at90" | "at95" | "at99" }) =>
    found(dixonCritical.get(given.count))[given.at],
  criticalRange: (given: { count: number; repeatability: number }) =>
    found(criticalRange(given.count, given.repeatability)),
  molarMass: (given: { formula: string }) => molarMass(given.formula).toNumber(),
  /** Against KHP; an example with other atomic weights states its own molar mass. */
  strengthFromPhthalate: (given: {
    mass: string;
    titre: string;
    purity: string;
    molarMass?: string;
  }) => {
    const ours = molarityFromPhthalate(
      quantity("g", given.mass),
      quantity("mL", given.titre),
      as("%", exact(given.purity).times(hundred)),
    );
    const theirs = given.molarMass ? exact(given.molarMass) : potassiumHydrogenPhthalate;
    return ours.times(potassiumHydrogenPhthalate).div(theirs).toNumber();
  },
  ffaPercent: (given: { titre: string; molarity: string; mass: string; acid: string }) =>
    figure(
      ffaPercent(
        quantity("mL", given.titre),
        quantity("mol/L", given.molarity),
        quantity("g", given.mass),
        found(fattyAcidNamed(given.acid)),
      ),
    ),
  acidValue: (given: { titre: string; molarity: string; mass: string }) =>
    figure(
      acidValue(
        quantity("mL", given.titre),
        quantity("mol/L", given.molarity),
        quantity("g", given.mass),
      ),
    ),
  acidValueOfOnePercent: (given: { acid: string }) =>
    figure(acidValueFromFfa(quantity("%", "1"), found(fattyAcidNamed(given.acid)))),
  temperatureCorrected: (given: {
    titre: string;
    readAt: string;
    setAt: string;
    perCelsius: string;
  }) =>
    temperatureCorrected(
      quantity("mL", given.titre),
      quantity("C", given.readAt),
      quantity("C", given.setAt),
      quantity("1/C", given.perCelsius),
    ).toNumber(),
  basePerGramOfAcid: (given: { base: string }) =>
    found(baseNamed(given.base)).molarMass.div(oleicAcid).toNumber(),
  ...batchFunctions,
  ...recordFunctions,
  ...fuelFunctions,
  unitFactor: (given: { unit: string }) => found(amountUnitNamed(given.unit)).factor.toNumber(),
} as const;

export type FunctionName = keyof typeof functions;
