/** Figures as they are shown: rounded for reading, halves away from zero, never for reckoning. */
import { computed, type Exact, isExact } from "../../core/exact/exact";

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

/**
 * A result and its doubt, to the same decimals: the doubt to two digits (GUM 7.2.6), the result never
 * to fewer than two decimals nor more than six.
 * @example withDoubt(1.9746, 0.1234) // 1.97 ± 0.12
 */
export function withDoubt(value: Exact, halfWidth: number): WithDoubt {
  const short = computed(halfWidth).toSignificantDigits(2);
  const places = Math.min(6, Math.max(2, short.isZero() ? 2 : 1 - short.e));
  return { value: fixed(value, places), halfWidth: fixed(halfWidth, places) };
}
