import type { Exact } from "../exact/exact";
import { exact, thousand } from "../exact/exact";
import type { Gram } from "./quantity";
import { kilogramsInPound } from "./units";

const ouncesInPound = exact(16);
const gramsInPound = kilogramsInPound.times(thousand);
const gramsInOunce = gramsInPound.div(ouncesInPound);

export interface Pounds {
  readonly pounds: Exact;
  /** Below 16, rounded to a tenth. */
  readonly ounces: Exact;
}

/**
 * Grams as whole pounds and the ounces over (avoirdupois), rounded to a tenth of an ounce.
 * @example inPounds(1287) // 2 lb 13.4 oz
 */
export function inPounds(mass: Gram): Pounds {
  const ounces = mass.div(gramsInOunce).toDecimalPlaces(1);
  const pounds = ounces.div(ouncesInPound).floor();
  return { pounds, ounces: ounces.minus(pounds.times(ouncesInPound)) };
}
