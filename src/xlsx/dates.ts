/**
 * Dates as the numbers a workbook holds. 1900: day 1 is 1 January 1900, and the format counts a 29
 * February 1900 that never was (ECMA-376 part 1, 18.17.4.1), so days before March 1900 are one off.
 * 1904: day 0 is 1 January 1904.
 */
import { millisecondsInDay, serialsEnd } from "../sheet/serial-days";

const secondsInDay = millisecondsInDay / 1000;
const iso = /^(\d{4})-(\d\d)-(\d\d)(?:[T ](\d\d):(\d\d)(?::(\d\d(?:\.\d{1,3})?))?)?Z?$/;

const day = (year: number, month: number, date: number): number =>
  Math.round(Date.UTC(year, month - 1, date) / millisecondsInDay);

const beginnings = { 1900: day(1899, 12, 31), 1904: day(1904, 1, 1) } as const;
const neverWas = 60;

/**
 * The number of a date, with its time as a fraction of a day; undefined when it is no date or lies
 * before the first a workbook can hold.
 * @example isoToSerial("2026-05-04", 1900) // 46146
 */
export function isoToSerial(text: string, system: 1900 | 1904): number | undefined {
  const found = iso.exec(text);
  if (!found) return undefined;
  const [year, month, date, hours, minutes, seconds] = found
    .slice(1)
    .map((part) => Number(part ?? 0));
  if (year === undefined || month === undefined || date === undefined) return undefined;
  const days = day(year, month, date);
  const back = new Date(days * millisecondsInDay);
  const isReal = back.getUTCMonth() === month - 1 && back.getUTCDate() === date;
  const time = ((hours ?? 0) * 3600 + (minutes ?? 0) * 60 + (seconds ?? 0)) / secondsInDay;
  const since = days - beginnings[system];
  if (!isReal || time >= 1 || since < (system === 1900 ? 1 : 0)) return undefined;
  return (system === 1900 && since >= neverWas ? since + 1 : since) + time;
}

/** The date of a number, and its time where it has one: 2026-05-04T09:30. */
export function serialToIso(serial: number, system: 1900 | 1904): string | undefined {
  if (!(serial >= 0 && serial < serialsEnd)) return undefined;
  const seconds = Math.round(serial * secondsInDay);
  const days = Math.floor(seconds / secondsInDay);
  const real = system === 1900 && days > neverWas ? days - 1 : days;
  const text = new Date(
    (real + beginnings[system]) * millisecondsInDay + (seconds % secondsInDay) * 1000,
  ).toISOString();
  return seconds % secondsInDay === 0 ? text.slice(0, 10) : text.slice(0, 19);
}
