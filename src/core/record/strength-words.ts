/** The sentence of a titrant's line. The plain-formula twin says the same words. */
import { hundred } from "../exact/exact";
import { shown } from "../exact/rounding";
import { allowedShift, monthDays, type StrengthLine } from "./strength-line";

const percent = shown(allowedShift.times(hundred));

export const strengthWords = {
  steady: "No change that chance does not explain: the mean of all is as good as the line.",
  falls: "falls",
  rises: "rises",
  goes: (way: string, change: string): string =>
    `It ${way} by ${change} % in ${monthDays} days, more than chance explains`,
  stays: (goes: string, days: string): string =>
    `${goes}; by this line it stays within ${percent} % of the first for ${days} days after it.`,
  left: (goes: string, days: string, asked: string): string =>
    `${goes}; by this line it left ${percent} % of the first ${days} days after it, and this is day ${asked}: set it again.`,
};

/** Digits of a change, and decimals of a day. */
export const changeDigits = 2;

/** A day is counted in whole ones, give or take a rounding error. */
const wholeDays = (days: number): string => String(Math.floor(days + 1e-9));

/** @returns one sentence of at most 200 characters */
export function strengthInWords(line: StrengthLine): string {
  if (!line.isChanging) return strengthWords.steady;
  const way = line.change.lt(0) ? strengthWords.falls : strengthWords.rises;
  const size = shown(line.change.abs().toSignificantDigits(changeDigits));
  const goes = strengthWords.goes(way, size);
  const days = wholeDays(line.daysWithin);
  const asked = wholeDays(line.daysAsked);
  return line.daysAsked > line.daysWithin
    ? strengthWords.left(goes, days, asked)
    : strengthWords.stays(goes, days);
}
