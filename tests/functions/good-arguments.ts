/** Arguments that every function accepts, by the argument's name: a plain batch of fryer oil. */
import { functionNamed } from "../../src/functions/catalogue";

const byName: Record<string, unknown> = {
  titres: [[2.4, 2.5, 2.45]],
  blanks: [[0.15]],
  readings: [[2.4, 2.5, 2.45]],
  correctedTitre: 2.3,
  molarity: 0.1,
  sampleMass: 7.05,
  sampleMasses: [[7.05, 7.06, 7.04]],
  fattyAcid: "oleic",
  acidValue: 3,
  ffaPercent: 1.5,
  titrantStrength: 5.6,
  sampleVolume: 5,
  mass: 5.6,
  volume: 1,
  base: "KOH",
  assayPercent: 90,
  khpMass: 0.5105,
  purityPercent: 99.9,
  titre: 2.4,
  readAt: 25,
  setAt: 20,
  titrantSolvent: "alcohol",
  expectedFfaPercent: 1.5,
  targetTitre: 2,
  oil: "canola",
  temperature: 25,
  amount: 100,
  unit: "l",
  gramsPerLitre: 7,
  volumePercent: 20,
  limit: 0.1,
  step: 0.05,
  confidencePercent: 90,
  standardDeviation: 0.05,
  halfWidth: 0.1,
  titreStep: 0.05,
  massStep: 0.01,
  molarityPercent: 1,
  samplePercent: 2,
  oilMass: 91.5,
  baseCharge: 0.765,
  limitFfaPercent: 4,
  molarRatio: 6,
  acidValueA: 10,
  acidValueB: 1,
  targetAcidValue: 4,
  acidValues: [[10, 1]],
  masses: [[100, 200]],
  waterPercent: 0.05,
  acidAssayPercent: 96,
  amounts: [[50, 100, 200]],
  burettePercent: 1,
  usualScatter: 0.04,
  usualFreedom: 20,
  khpMasses: [[0.5105, 0.512, 0.511]],
  titreSets: [
    [2.4, 2.45, 2.5],
    [1.1, 1.15, ""],
    [3, 3, 3.1],
  ],
  blankSets: [
    [0.1, 0.15],
    [0.1, ""],
    ["", 0.12],
  ],
  sampleMassSets: [
    [7.05, 7.06, 7.04],
    [7, "", ""],
    [6.9, 7.1, 7],
  ],
  dates: [[45658, 45668, 45678, 45690]],
  strengths: [[0.1, 0.1002, 0.1001, 0.1004]],
  day: 45700,
  values: [[0.1, 0.12, 0.11, 0.13, 0.12, 0.11]],
  baseline: 5,
  weight: 0.3,
};

/** Where one name means two things. */
const byFunction: Record<string, Record<string, unknown>> = {
  KHPUNCERTAINTY: { purityPercent: 0.1 },
};

export function goodArguments(id: string): unknown[] {
  return (functionNamed(id)?.arguments ?? []).map(({ name }) => {
    const own = byFunction[id] ?? {};
    if (!(name in own) && !(name in byName)) throw new Error(`no good value for ${name}`);
    return own[name] ?? byName[name];
  });
}
