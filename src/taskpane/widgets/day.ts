/** Days as 2026-09-30, counted without a clock: today is always handed in. */
import { millisecondsInDay, serialOf1970, timeOfSerial } from "../../sheet/serial-days";

/** Days since 1 January 1970; undefined for a text that is no day of the calendar. */
export function dayNumber(day: string): number | undefined {
  const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day) ?? [];
  if (year === undefined || month === undefined || date === undefined) return undefined;
  const time = Date.UTC(Number(year), Number(month) - 1, Number(date));
  return dayText(time) === day ? time / millisecondsInDay : undefined;
}

const dayText = (time: number): string => new Date(time).toISOString().slice(0, 10);

/** @example sheetDay("2026-09-30") // 46295 */
export const sheetDay = (day: string): number => (dayNumber(day) ?? 0) + serialOf1970;

/** The day a cell of the sheet means: the other way round. */
export const dayOfSheet = (serial: number): string => dayText(timeOfSerial(Math.floor(serial)));

/** Whole days from one day to another; negative when it is yet to come. */
export function daysBetween(from: string, to: string): number | undefined {
  const start = dayNumber(from);
  const end = dayNumber(to);
  return start === undefined || end === undefined ? undefined : end - start;
}

/** So many whole days back, in words. */
export function daysAgo(days: number): string {
  if (days === 0) return "today";
  return days === 1 ? "yesterday" : `${days} days ago`;
}

/** The day it is where this person is. */
export const localDay = (now: Date): string => {
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};
