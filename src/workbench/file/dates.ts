/**
 * The grid counts days from 1900. A file that counts them from 1904 has its dates moved on the way in
 * and back on the way out; a cell is a date when its number format shows a day, a month or a year. A time
 * of day is the same in both, and so is what would come to lie before the first day.
 */
import { numfmt } from "@univerjs/core";

/** Days from the first day of the one system to that of the other: ECMA-376 part 1, 18.17.4.1. */
const between = 1462;

export type DateShift = <T>(value: T, format: string | undefined) => T;

/** What stands in quotation marks, brackets or behind a backslash is text; m beside h or s is minutes. */
export const showsDays = (format: string): boolean =>
  numfmt.isDateFormat(format) &&
  /[dy]|(?<![hs:]\W?)m(?!\W?s)/i.test(
    format.replace(/"[^"]*"|\[[^\]]*\]|\\.|general/gi, "").replace(/am\/pm|a\/p/gi, ""),
  );

const shifted =
  (days: number): DateShift =>
  (value, format) =>
    typeof value === "number" && value + days >= 0 && format !== undefined && showsDays(format)
      ? ((value + days) as typeof value)
      : value;

const same: DateShift = (value) => value;

/** From the file to the grid. */
export const datesIn = (dates: 1900 | 1904): DateShift =>
  dates === 1904 ? shifted(between) : same;

/** From the grid to the file. */
export const datesOut = (dates: 1900 | 1904): DateShift =>
  dates === 1904 ? shifted(-between) : same;
