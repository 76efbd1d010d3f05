import { sum } from "../exact/lists";
import { type AcidValue, as, type Fraction, type Kilogram } from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { normal95 } from "../uncertainty/standard-uncertainty";

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

export interface LotDoubt {
  /** Of the mass, 0 to 1. */
  readonly share: number;
  /** Half-width of the lot's 95 % interval, in any one unit. */
  readonly halfWidth: number;
  /** The part of it that titrant and burette bring, which all lots of one bench have in common. */
  readonly shared: number;
}

/**
 * Half-width of the interval of a mix's acid, by the law of propagation (JCGM 100:2008, 5.2.2): what titrant
 * and burette bring errs the same way in every lot and adds up; the rest is each lot's own, and adds as the
 * root of squares. So it lies between the root of squares of all and their sum.
 * @example blendedHalfWidth([{ share: 0.5, halfWidth: 0.5, shared: 0.3 }, { share: 0.5, halfWidth: 0.5, shared: 0.3 }]) // 0.4123
 */
export function blendedHalfWidth(lots: readonly LotDoubt[]): number {
  const inCommon = lots.reduce((total, { share, shared }) => total + share * shared, 0);
  const own = lots.reduce(
    (total, { share, halfWidth, shared }) =>
      total + share ** 2 * Math.max(0, halfWidth ** 2 - shared ** 2),
    0,
  );
  return Math.sqrt(inCommon ** 2 + own);
}

/** From limits of even chance to the half-width of 95 %, as in a titration's own ±. */
export const limitTo95 = normal95 / Math.sqrt(3);

/**
 * The part of a result's half-width that titrant and burette bring.
 *   result x 1.96 sqrt((titrant^2 + burette^2) / 3) / 100
 * @param titrantPercent,burettePercent limits, %, 0 where not given
 */
export const sharedHalfWidth = (
  result: number,
  titrantPercent: number,
  burettePercent: number,
): number => (result * limitTo95 * Math.hypot(titrantPercent, burettePercent)) / 100;
