/** Dates as the spreadsheet counts them or as people type them: 46146, 04.05.2026, 4 May 26. */
import { serialDay } from "../../sheet/serial-days";

const months = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");

const dayNumber = (year: number, month: number, day: number): number | undefined => {
  const full = year < 100 ? 2000 + year : year;
  if (full < 1950 || full > 2199 || month < 1 || month > 12 || day < 1 || day > 31)
    return undefined;
  return serialDay(full, month, day);
};

const monthNamed = (word: string): number => months.indexOf(word.slice(0, 3).toLowerCase()) + 1;

/** In which order a book writes days: 03/04 is 3 April or 4 March. */
export type DateOrder = "day first" | "month first";

type Reader = readonly [RegExp, (parts: readonly string[], order: DateOrder) => number | undefined];

const number = (text: string | undefined): number => Number(text);

const readers: readonly Reader[] = [
  [
    /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})/,
    ([y, m, d]) => dayNumber(number(y), number(m), number(d)),
  ],
  [
    /^(\d{1,2})[-/. ](\d{1,2})[-/. ](\d{4}|\d{2})$/,
    ([one, other, y], order) => {
      const dayFirst = dayNumber(number(y), number(other), number(one));
      const monthFirst = dayNumber(number(y), number(one), number(other));
      return order === "day first" ? (dayFirst ?? monthFirst) : (monthFirst ?? dayFirst);
    },
  ],
  [
    /^(?:[a-z]{2,9}\.?,? +)?(\d{1,2})(?:st|nd|rd|th)?[-/. ]+([a-z]{3,9})\.?[-/., ]+(\d{4}|\d{2})$/i,
    ([d, m = "", y]) => dayNumber(number(y), monthNamed(m), number(d)),
  ],
  [
    /^([a-z]{3,9})\.? +(\d{1,2})(?:st|nd|rd|th)?,? +(\d{4}|\d{2})$/i,
    ([m = "", d, y]) => dayNumber(number(y), monthNamed(m), number(d)),
  ],
];

/** The day a text names, counted from 30 December 1899; undefined when it names none. */
export function dateFromText(text: string, order: DateOrder = "day first"): number | undefined {
  const plain = text.trim();
  for (const [pattern, read] of readers) {
    const parts = pattern.exec(plain)?.slice(1);
    const day = parts && read(parts, order);
    if (day !== undefined) return day;
  }
  return undefined;
}

const twoNumbers = /^(\d{1,2})[-/. ](\d{1,2})[-/. ](?:\d{4}|\d{2})$/;

/** The order that a text can only be in; "either" where it may be both and they are two days. */
export function orderOf(text: string): DateOrder | "either" | undefined {
  const parts = twoNumbers.exec(text.trim());
  if (!parts) return undefined;
  const [one, other] = [Number(parts[1]), Number(parts[2])];
  if (one > 12 && other <= 12) return "day first";
  if (other > 12 && one <= 12) return "month first";
  return one === other || one > 12 ? undefined : "either";
}

/** Does a number format show a date? Quoted words and colours do not count. */
export const isDateFormat = (format: string): boolean =>
  /[dy]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\./g, "").replace(/general/i, ""));

/** The day a cell holds; a bare number counts only in a date's format. */
export function dateFrom(value: unknown, format: string, order?: DateOrder): number | undefined {
  if (typeof value === "string") return dateFromText(value, order);
  const isDay = typeof value === "number" && value > 18_000 && value < 110_000;
  return isDay && isDateFormat(format) ? value : undefined;
}
