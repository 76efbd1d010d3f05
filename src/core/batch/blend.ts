import { sum } from "../exact/lists";
import { type AcidValue, as, type Fraction, type Kilogram } from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";

/**
 * Mass fraction of lot A in a blend of A and B that has the target acid value.
 *   x = (target - B) / (A - B)
 * @returns 0 to 1
 * @example blend(10.0, 1.0, 4.0) // 0.3333
 */
export function blend(a: AcidValue, b: AcidValue, target: AcidValue): Outcome<Fraction> {
  if (a.eq(b)) return problem({ code: "equal-lots", acidValue: a });
  const [low, high] = a.lt(b) ? [a, b] : [b, a];
  if (target.lt(low) || target.gt(high)) {
    return problem({ code: "target-outside", target, low, high });
  }
  return as("fraction", target.minus(b).div(a.minus(b)));
}

/**
 * Acid value of lots mixed: each counts by its mass.
 * @param lots one or more, each its acid value and its mass
 * @example blendedAcidValue([[10.0, 100], [1.0, 200]]) // 4.0
 */
export function blendedAcidValue(lots: readonly (readonly [AcidValue, Kilogram])[]): AcidValue {
  const acid = sum(lots.map(([value, mass]) => value.times(mass)));
  return as("mg KOH/g", acid.div(sum(lots.map(([, mass]) => mass))));
}

/**
 * Half-width of the interval of a mix's acid: each lot's doubt by its share, added as if all erred the
 * same way, since one titrant and one hand measured them.
 * @param lots each its half-width, in any one unit, and its share of the mass
 * @example blendedHalfWidth([[0.2, 0.5], [0.1, 0.5]]) // 0.15
 */
export const blendedHalfWidth = (lots: readonly (readonly [number, number])[]): number =>
  lots.reduce((total, [halfWidth, share]) => total + halfWidth * share, 0);
