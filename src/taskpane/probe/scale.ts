/** What a probe's scale is, pH or mV, and what it cannot show. */
import { type Exact, exact } from "../../core/exact/exact";
import { limits, misses } from "../../core/reference/limits";

const highestPh = exact(14);

const isPhLike = (reading: Exact): boolean => reading.gte(0) && reading.lte(highestPh);

/** A curve in mV passes through 0 to 14 in a reading or two; one in pH stays there but for a slip. */
export const isPhScale = (readings: readonly Exact[]): boolean =>
  readings.filter(isPhLike).length * 2 > readings.length;

/** @returns what is wrong with it, and what is allowed */
export function notOnScale(reading: Exact, isPh: boolean): string | undefined {
  const given = reading.toString();
  if (isPh) return isPhLike(reading) ? undefined : `has pH ${given}: a pH lies from 0 to 14.`;
  return misses(reading, limits.probeReading)
    ? `has ${given} mV: a probe shows -2000 to 2000 mV.`
    : undefined;
}
