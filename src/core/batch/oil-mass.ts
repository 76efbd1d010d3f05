import { type Exact, exact } from "../exact/exact";
import {
  as,
  type Celsius,
  type Gram,
  type Kilogram,
  type Litre,
  type Millilitre,
} from "../quantity/quantity";
import type { AmountUnit } from "../quantity/units";
import { type Outcome, isProblem, problem } from "../problem/problem";
import { limits } from "../reference/limits";
import type { Oil } from "../reference/oils";
import { densityAt } from "./density";

const highest = exact(limits.oilMass.to);

/**
 * Kilograms of oil in an amount given in any unit. For a mass, oil and temperature do nothing.
 * @returns kg, up to 1,000,000
 * @example oilMass(20, us_gal, 0.92) // 69.6516 kg
 */
export function oilMass(
  amount: Exact,
  unit: AmountUnit,
  oil: Oil,
  temperature?: Celsius,
): Outcome<Kilogram> {
  const inUnit = amount.times(unit.factor);
  let kilograms = inUnit;
  if (unit.measures === "volume") {
    const density = densityAt(oil, temperature);
    if (isProblem(density)) return density;
    kilograms = inUnit.times(density);
  }
  if (kilograms.gt(highest)) {
    return problem({ code: "too-much-oil", given: kilograms, limit: highest });
  }
  return as("kg", kilograms);
}

/** The room that so much oil takes: oil that was weighed fills a vessel, too. */
export function oilLitres(mass: Kilogram, oil: Oil, temperature?: Celsius): Outcome<Litre> {
  const density = densityAt(oil, temperature);
  return isProblem(density) ? density : as("L", mass.div(density));
}

/**
 * Grams of a sample taken by volume. Weighing is better: a syringe is good to about 5 %.
 * @example sampleGrams(5, canola, 25) // 4.5605 g
 */
export function sampleGrams(volume: Millilitre, oil: Oil, temperature?: Celsius): Outcome<Gram> {
  const density = densityAt(oil, temperature);
  return isProblem(density) ? density : as("g", volume.times(density));
}
