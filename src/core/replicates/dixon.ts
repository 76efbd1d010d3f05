/**
 * Dixon's r10 (also called Q): the gap beside the extreme reading over the range. It serves as a
 * cross-check only: at n = 3 it is the same test as Grubbs', G = (1 + Q) / sqrt(3 (1 - Q + Q^2)).
 */
import { type Exact, one, zero } from "../exact/exact";

/**
 * The larger of the two gaps at the ends, over the range, exactly.
 * @param values three or more
 * @returns 0 to 1; 0 when all are equal
 * @example dixonRatio([2.30, 2.35, 2.90]) // 0.9167
 */
export function dixonRatio(values: readonly Exact[]): Exact {
  const sorted = [...values].sort((a, b) => a.comparedTo(b));
  const [lowest, second] = sorted;
  const [highest, previous] = [...sorted].reverse();
  if (!lowest || !second || !highest || !previous || highest.eq(lowest)) return zero;
  const low = second.minus(lowest);
  const high = highest.minus(previous);
  return (low.gt(high) ? low : high).div(highest.minus(lowest));
}

/**
 * Two-sided chance of a ratio as large at n = 3, in closed form.
 *   2 (1 - F(Q)),  F(R) = 3/pi (atan((2R - 1)/sqrt 3) + pi/6)
 */
export function dixonProbabilityOfThree(ratio: Exact): number {
  const below = (3 / Math.PI) * Math.atan((2 * ratio.toNumber() - 1) / Math.sqrt(3)) + 0.5;
  return Math.min(one.toNumber(), 2 * (1 - below));
}
