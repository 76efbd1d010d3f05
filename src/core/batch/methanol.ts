import { one, thousand } from "../exact/exact";
import {
  type AcidValue,
  as,
  type Fraction,
  type Kilogram,
  type Litre,
  type MoleRatio,
} from "../quantity/quantity";
import { type Outcome, isProblem, problem } from "../problem/problem";
import { acidValueDefinition, methanol, oleicAcid } from "../reference/compounds";
import { methanolDensity } from "../reference/liquids";
import type { Oil } from "../reference/oils";
import { acidPerKilogram } from "../titration/acid-value";

/** The acid value at which the oil would be acid alone: 198.6 mg KOH/g. */
export const allAcid = thousand.times(acidValueDefinition).div(oleicAcid);

/**
 * The share of the oil that is triglyceride: what is left after the acid, counted by mole as oleic.
 * @param value mg KOH/g; left out: no acid
 */
export function triglycerideFraction(value?: AcidValue): Outcome<Fraction> {
  if (value === undefined) return as("fraction", one);
  if (value.gte(allAcid)) {
    return problem({ code: "no-triglyceride-left", acidValue: value, limit: allAcid });
  }
  return as("fraction", one.minus(acidPerKilogram(value).times(oleicAcid).div(thousand)));
}

/** Kilograms of methanol for a molar ratio to the triglyceride. */
export function methanolMass(
  oilMass: Kilogram,
  ratio: MoleRatio,
  value: AcidValue | undefined,
  oil: Oil,
): Outcome<Kilogram> {
  const share = triglycerideFraction(value);
  if (isProblem(share)) return share;
  return as("kg", oilMass.times(share).times(ratio).times(methanol).div(oil.triglyceride));
}

/**
 * Litres of methanol at 20 C. The ratio is to the triglyceride left after the acid.
 * @example methanolVolume(91.5, 6, undefined, oil not named) // 25.10 L
 */
export function methanolVolume(
  oilMass: Kilogram,
  ratio: MoleRatio,
  value: AcidValue | undefined,
  oil: Oil,
): Outcome<Litre> {
  const mass = methanolMass(oilMass, ratio, value, oil);
  return isProblem(mass) ? mass : as("L", mass.div(methanolDensity));
}
