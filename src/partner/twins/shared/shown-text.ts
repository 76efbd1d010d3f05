/** Figures in words: never by joining a number to a text, since programs differ in its digits. */
import { constantOf } from "./constant";
import type { Reading } from "./reading";
import { significant, text } from "./text";

/** Part of a figure that two doubles of the same decimals may differ by. */
const rounding = "1E-14";

const upTo = (most: number): number[] => Array.from({ length: most + 1 }, (_, place) => place);

/** How many decimals a figure has, up to one more than the most. */
export const decimalsOf = (value: string, most: number): string =>
  upTo(most)
    .map((places) => `(ABS(${value}-ROUND(${value},${places}))>${rounding}*ABS(${value}))`)
    .join("+");

/** With so many decimals. A double just under a half in the last place is that half. */
export const fixed = (value: string, places: string | number): string =>
  `FIXED(ROUND(${value},12),${places},TRUE)`;

const mostDecimals = 13;

/** A figure that has few digits, with all of its decimals. */
export function exactly(reading: Reading, value: string): string {
  const constant = constantOf(value);
  if (typeof constant?.value === "number") return text(value.replace(/[()]/g, ""));
  const places = reading.call.helper("decimals of a figure shown", decimalsOf(value, mostDecimals));
  return `FIXED(${value},${places},TRUE)`;
}

/** Rounded to significant digits, no zeros at the end. */
export function shown(reading: Reading, value: string, digits: number): string {
  const constant = constantOf(value);
  if (typeof constant?.value === "number") {
    return text(String(Number(constant.value.toPrecision(digits))));
  }
  return exactly(reading, reading.call.helper("figure shown", significant(value, digits)));
}
