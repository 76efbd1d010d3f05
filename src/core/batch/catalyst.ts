import { hundred, ten } from "../exact/exact";
import { atMost } from "../exact/compare";
import { type AcidValue, as, type Gram, type Kilogram, type Percent } from "../quantity/quantity";
import { isProblem, type Outcome, problem } from "../problem/problem";
import type { Base } from "../reference/bases";
import { acidPerKilogram } from "../titration/acid-value";
import { ffaAsOleic } from "../titration/free-fatty-acid";

/** Pure base of a mass, as the lye is weighed. */
const asWeighed = (pure: Gram, assay: Percent): Gram => as("g", pure.times(hundred).div(assay));

/**
 * Pure base that neutralises the acid: one mole for each mole of acid.
 *   g = kg oil x AV / 56.1 x Mbase
 */
export const pureForAcid = (oilMass: Kilogram, value: AcidValue, base: Base): Gram =>
  as("g", oilMass.times(acidPerKilogram(value)).times(base.molarMass));

/** Pure base for the reaction: a percentage of the oil's mass. */
export const pureForReaction = (oilMass: Kilogram, baseCharge: Percent): Gram =>
  as("g", oilMass.times(ten).times(baseCharge));

/**
 * Grams of lye, as weighed, for the acid alone.
 * @example neutraliser(91.5, 5.0, NaOH, 98) // 332.83 g
 */
export const neutraliser = (
  oilMass: Kilogram,
  value: AcidValue,
  base: Base,
  assay: Percent,
): Gram => asWeighed(pureForAcid(oilMass, value, base), assay);

/**
 * Above the acid limit no dose is given until a higher limit is asked for.
 * The limit compares the percent as oleic acid, whatever the acid was reported as.
 */
export function withinAcidLimit(value: AcidValue, limitFfa: Percent): Outcome<AcidValue> {
  const ffaPercent = ffaAsOleic(value);
  if (atMost(ffaPercent, limitFfa)) return value;
  return problem({ code: "acid-above-limit", ffaPercent, limitPercent: limitFfa });
}

/**
 * The same as `catalyst` for an acid value that was held against the limit already: a table of doses
 * asks that once a column.
 */
export const unlimitedCatalyst = (
  oilMass: Kilogram,
  value: AcidValue,
  base: Base,
  assay: Percent,
  baseCharge: Percent,
): Gram => {
  const pure = pureForAcid(oilMass, value, base).plus(pureForReaction(oilMass, baseCharge));
  return asWeighed(as("g", pure), assay);
};

/**
 * Grams of lye, as weighed, for acid and reaction together.
 *   g = (kg AV / 56.1 Mbase + 10 kg charge) / (assay/100)
 * The acid part comes from moles of acid; it is never a fraction of the base charge.
 * @param baseCharge percent of the oil's mass, as pure base
 * @param limitFfa percent FFA as oleic above which no dose is given
 * @example catalyst(91.5, 5.0, KOH, 90, 0.765, 5) // 1286.13 g
 */
export function catalyst(
  oilMass: Kilogram,
  value: AcidValue,
  base: Base,
  assay: Percent,
  baseCharge: Percent,
  limitFfa: Percent,
): Outcome<Gram> {
  const allowed = withinAcidLimit(value, limitFfa);
  return isProblem(allowed) ? allowed : unlimitedCatalyst(oilMass, value, base, assay, baseCharge);
}
