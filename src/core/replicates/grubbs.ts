/**
 * Grubbs' test for one outlier on either side (ISO 5725-2, 7.3.4; ASTM E178), with and without
 * allowance for the graduation.
 */
import { fromDeviations } from "./deviations";
import { studentT, twoSidedTail } from "./student-t";

/** The fewest readings that can be tested. */
export const fewestForGrubbs = 3;

/** G cannot exceed this, however far off one reading is. */
export const largestG = (count: number): number => (count - 1) / Math.sqrt(count);

/**
 * The critical value, computed and never tabulated: at n = 3 the printed 1.155 lies above the largest
 * G there can be (1.15470), so that a program with the printed table never flags anything.
 *   (n-1)/sqrt n sqrt( t^2 / (n-2+t^2) ),  t exceeded in size with probability alpha/n, n-2 degrees
 * @param count readings, 3 or more
 * @param alpha two-sided risk of a false alarm: 0.05 for 95 %
 * @example grubbsCritical(8, 0.05) // 2.12665
 */
export function grubbsCritical(count: number, alpha: number): number {
  const t = studentT(alpha / count, count - 2);
  return largestG(count) * Math.sqrt((t * t) / (count - 2 + t * t));
}

/** A rounding error below the largest G there can be is that G: two readings equal, one apart. */
const atTheBound = 1e-12;

/**
 * Chance that honest readings show a G as large, on either side (Bonferroni; exact for a small p).
 *   min(1, 2 n Pr[T > tG]),  tG = sqrt( n(n-2)G^2 / ((n-1)^2 - n G^2) )
 * @param g 0 or more
 * @param count readings, 3 or more
 */
export function grubbsProbability(g: number, count: number): number {
  const squared = count * g * g;
  const below = (count - 1) ** 2 - squared;
  const t =
    below > atTheBound * squared
      ? Math.sqrt(((count - 2) * squared) / below)
      : Number.POSITIVE_INFINITY;
  return Math.min(1, count * twoSidedTail(t, count - 2));
}

/**
 * The scatter a reading is judged against: a titre is the difference of two readings, each good to
 * half a step, which adds step^2/6 to the variance. A spread finer than the graduation proves nothing.
 */
const withGraduation = (deviation: number, step: number): number =>
  Math.sqrt(deviation * deviation + (step * step) / 6);

export interface Farthest {
  /** Place in the order given; of two as far, the first. */
  readonly position: number;
  /** The largest deviation over the sample deviation, as published. */
  readonly plain: number;
  /** The same with allowance for the graduation: what is tested. */
  readonly graduated: number;
}

/**
 * The value farthest from the mean.
 * @param deviationsFromMean three or more, not all 0
 * @param step graduation, the same unit; 0 for none
 */
export function farthest(deviationsFromMean: readonly number[], step: number): Farthest {
  const sizes = deviationsFromMean.map(Math.abs);
  const size = Math.max(...sizes);
  const scatter = fromDeviations(deviationsFromMean);
  return {
    position: sizes.indexOf(size),
    plain: size / scatter,
    graduated: size / withGraduation(scatter, step),
  };
}
