import { criticalRangeFactors } from "../reference/critical-range";

/**
 * The range that n results stay within in 95 of 100 cases (ISO 5725-6, 5.2.2).
 *   CR = f(n) sigma_r
 * @param count results, 2 to 10
 * @param repeatability standard deviation of one result under repeatability, from your own history
 * @returns the unit of the repeatability; undefined where the standard prints no factor
 * @example criticalRange(3, 0.05) // 0.165
 */
export function criticalRange(count: number, repeatability: number): number | undefined {
  const factor = criticalRangeFactors.get(count);
  return factor === undefined ? undefined : factor * repeatability;
}
