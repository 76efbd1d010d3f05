import { hundred, ten } from "../exact/exact";
import { atMost } from "../exact/compare";
import {
  type AcidValue,
  as,
  type Gram,
  type Millilitre,
  type MolePerLitre,
  type Percent,
} from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { acidValueDefinition } from "../reference/compounds";
import { type FattyAcid, oleic } from "../reference/fatty-acids";
import { plausibleAcidValue } from "./acid-value";

const plausiblePercent = (value: Percent): Outcome<Percent> =>
  atMost(value, hundred)
    ? value
    : problem({ code: "too-much-acid", quantity: "FFA", given: value, limit: hundred });

/**
 * Free fatty acid (acidity, ISO 660; AOCS Ca 5a-40), percent of the oil's mass.
 *   FFA = c V M / (10 m)
 * @param correctedTitre mL, above 0
 * @param molarity mol/L of the titrant
 * @param sampleMass g of oil
 * @param acid the acid it is reported as; oleic unless stated
 * @returns percent (1.97 means 1.97 %), up to 100, unrounded
 * @example ffaPercent(10.0, 0.1, 28.2, oleic) // 1.00
 */
export const ffaPercent = (
  correctedTitre: Millilitre,
  molarity: MolePerLitre,
  sampleMass: Gram,
  acid: FattyAcid = oleic,
): Outcome<Percent> =>
  plausiblePercent(
    as("%", molarity.times(correctedTitre).times(acid.reportedMass).div(ten.times(sampleMass))),
  );

/** Percent and mg KOH/g differ by this and the acid's mass. */
const percentPerAcidValue = ten.times(acidValueDefinition);

/** Percent as an acid, from an acid value; may exceed 100 for an acid of large mass. */
const percentOf = (value: AcidValue, acid: FattyAcid): Percent =>
  as("%", value.times(acid.reportedMass).div(percentPerAcidValue));

/**
 * The same quantity in the other unit: exact, with no chemistry in it.
 *   FFA = AV M / 561
 * @example ffaFromAcidValue(5.000, oleic) // 2.51337
 */
export const ffaFromAcidValue = (value: AcidValue, acid: FattyAcid = oleic): Outcome<Percent> =>
  plausiblePercent(percentOf(value, acid));

/** What limits and bands compare: the percent as oleic acid (282 g/mol), without an upper bound. */
export const ffaAsOleic = (value: AcidValue): Percent => percentOf(value, oleic);

/**
 *   AV = 561 FFA / M
 * @example acidValueFromFfa(1, oleic) // 1.98936
 */
export const acidValueFromFfa = (percent: Percent, acid: FattyAcid = oleic): Outcome<AcidValue> =>
  plausibleAcidValue(
    as("mg KOH/g", percent.times(ten).times(acidValueDefinition).div(acid.reportedMass)),
  );

/**
 * The sample that brings the titre to a target, at an expected acidity.
 *   m = c V M / (10 FFA)
 * @example sampleToWeigh(1.0, 0.1, 10.0, oleic) // 28.2 g
 */
export const sampleToWeigh = (
  expected: Percent,
  molarity: MolePerLitre,
  targetTitre: Millilitre,
  acid: FattyAcid = oleic,
): Gram => as("g", molarity.times(targetTitre).times(acid.reportedMass).div(ten.times(expected)));
