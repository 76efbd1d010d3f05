import type { Exact } from "../exact/exact";
import { mean } from "../exact/lists";

/**
 * Each value less the mean: taken exactly and only then turned into a double, so that equal readings
 * deviate by exactly 0 and a ten-millionth part is not lost beside a large mean.
 * @param values one or more
 */
export function deviations(values: readonly Exact[]): number[] {
  const middle = mean(values);
  return values.map((value) => value.minus(middle).toNumber());
}

/** Sum of squares, from deviations: never as the sum of squares less the square of the sum. */
export const sumOfSquares = (deviationsFromMean: readonly number[]): number =>
  deviationsFromMean.reduce((total, deviation) => total + deviation * deviation, 0);

/**
 * Standard deviation of a sample.
 *   s = sqrt( sum (x - mean)^2 / (n - 1) )
 * @param deviationsFromMean two or more, in any unit
 * @returns the same unit; 0 exactly when all values are equal
 */
export const fromDeviations = (deviationsFromMean: readonly number[]): number =>
  Math.sqrt(sumOfSquares(deviationsFromMean) / (deviationsFromMean.length - 1));

/** @example sampleDeviation([2.40, 2.50, 2.45]) // 0.05 */
export const sampleDeviation = (values: readonly Exact[]): number =>
  fromDeviations(deviations(values));
