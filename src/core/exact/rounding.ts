import type { Exact } from "./exact";

/** Round to a number of decimal places, halves away from zero: 2.345 to 2 places is 2.35. */
export const rounded = (value: Exact, places: number): Exact => value.toDecimalPlaces(places);

/** More are never shown inside a sentence. */
const mostDigits = 10;

/** The shortest honest text of a figure inside a sentence: at most ten significant digits. */
export const shown = (value: Exact): string => value.toSignificantDigits(mostDigits).toString();

/** As few digits as say what must be said of a value, from so many on. */
function shownSo(value: Exact, fewest: number, isSaid: (short: Exact) => boolean): string {
  for (let digits = fewest; ; digits += 1) {
    const short = value.toSignificantDigits(digits);
    if (digits === mostDigits || isSaid(short)) return short.toString();
  }
}

/** As few digits as still show that a value is above its limit: 6.3, or 5.0003 beside a limit of 5. */
export const shownAbove = (value: Exact, limit: Exact): string =>
  shownSo(value, 2, (short) => short.gt(limit));

/** The same below a limit: 4.9998 beside an edge of 5, never 5. */
export const shownBelow = (value: Exact, limit: Exact): string =>
  shownSo(value, 3, (short) => short.lt(limit));
