/**
 * How far one titration may scatter when it scatters as usual: the upper limit of the Shewhart s chart
 * with a known sigma, factor B6 (ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.2.1).
 */
import { action } from "./control-chart";

/** Gamma(n/2) / Gamma((n-1)/2), from n = 2 up: r(n+1) = (n-1)/2 / r(n). */
function gammaRatio(count: number): number {
  let ratio = 1 / Math.sqrt(Math.PI);
  for (let n = 2; n < count; n += 1) ratio = (n - 1) / 2 / ratio;
  return ratio;
}

/** Mean of the standard deviation of so many normal readings, over sigma: c4. */
const meanOfDeviation = (count: number): number => Math.sqrt(2 / (count - 1)) * gammaRatio(count);

/**
 *   s may be up to sigma (c4 + 3 sqrt(1 - c4^2))
 * @param count readings, 2 or more
 * @param sigma the usual scatter
 * @example scatterLimit(3, 1) // 2.2760
 */
export function scatterLimit(count: number, sigma: number): number {
  const c4 = meanOfDeviation(count);
  return sigma * (c4 + action * Math.sqrt(1 - c4 * c4));
}
