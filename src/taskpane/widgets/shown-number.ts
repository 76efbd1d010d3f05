/** Figures as they are shown: rounded for reading, halves away from zero, never for reckoning. */
import { computed, type Exact, isExact, ten, zero } from "../../core/exact/exact";

const exactOf = (value: Exact | number): Exact => (isExact(value) ? value : computed(value));

/** To so many decimals: 2.3 to two is 2.30. */
export const fixed = (value: Exact | number, places: number): string =>
  exactOf(value).toFixed(places);

/** To so many significant digits, without an exponent: 0.01782, 5.611. */
export const digits = (value: Exact | number, count = 3): string =>
  exactOf(value).toSignificantDigits(count).toFixed();

/** The same with its zeros kept: 5.60 to three digits. */
export function digitsKept(value: Exact | number, count = 3): string {
  const short = exactOf(value).toSignificantDigits(count);
  return short.toFixed(Math.max(0, count - 1 - (short.isZero() ? 0 : short.e)));
}

/** The beginning of a sentence. */
export const capital = (words: string): string =>
  `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;

export interface WithDoubt {
  readonly value: string;
  readonly halfWidth: string;
}

/** No figure is shown to more decimals. */
const mostPlaces = 6;

/** To the tens for places of -1, and so on. */
const toPlace = (value: Exact, places: number): string =>
  places >= 0 ? fixed(value, places) : value.toNearest(ten.pow(-places)).toFixed();

/**
 * A result and its doubt, to the same place: that of the doubt's second digit (GUM 7.2.6).
 * @example withDoubt(1.9746, 0.1234) // 1.97 ± 0.12
 * @example withDoubt(215.53, 2.304) // 215.5 ± 2.3
 */
export function withDoubt(value: Exact, halfWidth: number): WithDoubt {
  const short = computed(halfWidth).toSignificantDigits(2);
  const places = short.isZero() ? 2 : Math.min(mostPlaces, 1 - short.e);
  return { value: toPlace(value, places), halfWidth: toPlace(short, places) };
}

/**
 * The same as one text; without its doubt where that is not known.
 * @example doubtText(1.9746, undefined, 2) // "1.97"
 */
export function doubtText(value: Exact, halfWidth: number | undefined, places: number): string {
  if (halfWidth === undefined) return fixed(value, places);
  const shown = withDoubt(value, halfWidth);
  return `${shown.value} ± ${shown.halfWidth}`;
}

/**
 * Parts of a whole, each to so many decimals, that add up to what they add up to: what rounding down
 * leaves over goes to those that lost most by it.
 * @example partsShown([76.05, 23.95], 1) // "76.1", "23.9"
 */
export function partsShown(parts: readonly Exact[], places: number): string[] {
  const step = ten.pow(-places);
  const down = parts.map((part) => part.div(step).floor());
  const lost = parts.map((part, at) => part.div(step).minus(down[at] ?? part));
  const over = Math.round(lost.reduce((sum, each) => sum.plus(each), zero).toNumber());
  const byLoss = parts.map((_, at) => at).sort((a, b) => Number(lost[b]) - Number(lost[a]));
  const raised = new Set(byLoss.slice(0, over));
  return down.map((each, at) =>
    each
      .plus(raised.has(at) ? 1 : 0)
      .times(step)
      .toFixed(places),
  );
}
