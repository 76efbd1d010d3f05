/** Water of oil or fuel, measured: by drying a portion, or by the gas that calcium hydride makes of it. */
import { atMost } from "../exact/compare";
import { hundred } from "../exact/exact";
import {
  as,
  type Celsius,
  type Gram,
  type Kilopascal,
  type Litre,
  type Percent,
} from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { water } from "../reference/compounds";
import { gasConstant, zeroCelsius } from "../reference/gas";

/**
 * Water and what else leaves with it: 100 (before - after) / (before - dish) (ISO 662, commonly cited).
 * @returns % of the mass; nothing lost is a problem, since 0 would mean "not measured"
 * @example dish 45.312, before 65.812, after 65.790: 0.1073 %
 */
export function lossOnHeating(dish: Gram, before: Gram, after: Gram): Outcome<Percent> {
  if (before.lte(dish))
    return problem({ code: "nothing-in-dish", argument: "massBefore", given: before, dish });
  if (after.lt(dish))
    return problem({ code: "nothing-in-dish", argument: "massAfter", given: after, dish });
  if (after.gt(before)) return problem({ code: "heavier-dried", before, after });
  if (after.eq(before)) return problem({ code: "nothing-lost", after });
  return as("%", before.minus(after).times(hundred).div(before.minus(dish)));
}

/**
 * CaH2 + 2 H2O = Ca(OH)2 + 2 H2: a mole of hydrogen for each mole of water. dP V / (R T) moles.
 * @param gasSpace L above the sample, in the closed vessel
 * @example 12.0 kPa, 0.50 L, 23 C, 20 g: 0.2195 %
 */
export function waterFromGas(
  pressureRise: Kilopascal,
  gasSpace: Litre,
  temperature: Celsius,
  sampleMass: Gram,
): Outcome<Percent> {
  // kPa by L is J, as Pa by m3 is
  const moles = pressureRise.times(gasSpace).div(gasConstant.times(temperature.plus(zeroCelsius)));
  const given = moles.times(water).times(hundred).div(sampleMass);
  return atMost(given, hundred)
    ? as("%", given)
    : problem({ code: "too-much", called: "water", given, unit: "%", limit: hundred });
}
