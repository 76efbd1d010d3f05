/** Days as a spreadsheet counts them: day 0 is 30 December 1899. */
import { lastDay } from "../core/reference/limits";

export const millisecondsInDay = 86_400_000;

/** 1 January 1970, where a program's own clock begins. */
export const serialOf1970 = 25_569;

/** The first day that has no number: 1 January 10000. */
export const serialsEnd = lastDay + 1;

/** @example serialDay(2026, 5, 4) // 46146 */
export const serialDay = (year: number, month: number, date: number): number =>
  Date.UTC(year, month - 1, date) / millisecondsInDay + serialOf1970;

/** Midnight of a day, in milliseconds as a program's own clock counts. */
export const timeOfSerial = (serial: number): number => (serial - serialOf1970) * millisecondsInDay;
