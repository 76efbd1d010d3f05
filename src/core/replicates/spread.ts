import { type Exact, hundred } from "../exact/exact";
import { mean, range } from "../exact/lists";
import { sampleDeviation } from "./deviations";
import { type ReplicateSet, riskAt } from "./outlier-test";
import { studentT } from "./student-t";

/** What two readings or more show of their scatter. */
export interface Scatter {
  /** mL. */
  readonly deviation: number;
  /** Percent of the mean. */
  readonly relative: number;
  /** mL, exact. */
  readonly range: Exact;
  /** Half the width of the interval for the mean, mL, from the scatter alone: t s / sqrt n. */
  readonly halfWidth: number;
}

/** Half-width of the interval for a mean: t s / sqrt n. */
export const halfWidthOf = (deviation: number, count: number, risk: number): number =>
  (studentT(risk, count - 1) * deviation) / Math.sqrt(count);

/**
 * @returns undefined for a single reading, which has no scatter
 * @example scatter of 2.40, 2.50, 2.45 at 95 %: s 0.05, range 0.10, half-width 0.1242
 */
export function scatterOf(set: ReplicateSet): Scatter | undefined {
  const count = set.judged.length;
  if (count < 2) return undefined;
  const deviation = sampleDeviation(set.judged);
  return {
    deviation,
    relative: (deviation / mean(set.judged).toNumber()) * hundred.toNumber(),
    range: range(set.judged),
    halfWidth: halfWidthOf(deviation, count, riskAt(set.confidence)),
  };
}
