import { exact, thousand } from "../exact/exact";
import { type AcidValue, as, type GramPerMole, type Kilogram } from "../quantity/quantity";
import { atomicWeights } from "../reference/atomic-weights";
import type { Base } from "../reference/bases";
import { oleate } from "../reference/compounds";
import { acidPerKilogram } from "../titration/acid-value";

/** The soap a base makes of oleic acid: 320.5583 g/mol with potassium, 304.44977 with sodium. */
export const soapMolarMass = (base: Base): GramPerMole =>
  as("g/mol", oleate.plus(exact(atomicWeights[base.metal])));

/**
 * Kilograms of soap from neutralising the acid, as oleate of the base's metal.
 * @example soap(100, 1.98936, NaOH) // 1.0796 kg
 */
export const soap = (oilMass: Kilogram, value: AcidValue, base: Base): Kilogram =>
  as("kg", oilMass.times(acidPerKilogram(value)).times(soapMolarMass(base)).div(thousand));
