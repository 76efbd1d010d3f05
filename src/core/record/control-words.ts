/** The sentence of a control chart. The plain-formula twin says the same words. */
import { computed } from "../exact/exact";
import { shown } from "../exact/rounding";
import type { ControlChart } from "./control-chart";
import { controlFlags, flags, isBeyond } from "./control-flags";

export const controlWords = {
  calm: (count: string): string =>
    `All ${count} are in control: nothing here that chance does not explain.`,
  flagged: (value: string, place: string, count: string, flag: string): string =>
    `${value}, value ${place} of ${count}, is flagged (${flag}): look for what changed before it.`,
  drifting: (weighted: string): string =>
    `No single value is out, but their weighted mean, ${weighted}, is: something shifts slowly.`,
};

/** Digits of a mean in the sentence. */
export const meanDigits = 4;

/** Names the last value that is flagged; else a slow shift. @returns at most 200 characters */
export function controlInWords(chart: ControlChart): string {
  const found = controlFlags(chart);
  const count = String(found.length);
  const last = found.reduce((before, flag, place) => (flag === flags.none ? before : place), -1);
  const value = chart.values[last];
  const flag = found[last];
  if (value !== undefined && flag !== undefined) {
    return controlWords.flagged(shown(value), String(last + 1), count, flag);
  }
  const shift = chart.weighted.minus(chart.centre);
  if (!isBeyond(shift, chart.weightedWidth)) return controlWords.calm(count);
  return controlWords.drifting(
    shown(computed(chart.weighted.toNumber()).toSignificantDigits(meanDigits)),
  );
}
