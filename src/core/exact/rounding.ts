import type { Exact } from "./exact";

/** Round to a number of decimal places, halves away from zero: 2.345 to 2 places is 2.35. */
export const rounded = (value: Exact, places: number): Exact => value.toDecimalPlaces(places);

/** The shortest honest text of a figure inside a sentence: at most ten significant digits. */
export const shown = (value: Exact): string => value.toSignificantDigits(10).toString();

/** As few digits as still show that a value is above its limit: 6.3, or 5.0003 beside a limit of 5. */
export function shownAbove(value: Exact, limit: Exact): string {
  for (let digits = 2; digits < 12; digits += 1) {
    const short = value.toSignificantDigits(digits);
    if (short.gt(limit)) return shown(short);
  }
  return shown(value);
}

/** The same below a limit: 4.9998 beside an edge of 5, never 5. */
export function shownBelow(value: Exact, limit: Exact): string {
  for (let digits = 3; digits < 12; digits += 1) {
    const short = value.toSignificantDigits(digits);
    if (short.lt(limit)) return shown(short);
  }
  return shown(value);
}
