/**
 * The words plain formulas are made of. Only functions that every spreadsheet program has had for
 * decades: no names that need a prefix in the file, nothing that spills, nothing volatile.
 */
import type { Exact } from "../../../core/exact/exact";
import { slack } from "../../../core/exact/compare";
import { one } from "../../../core/exact/exact";
import type { Limits } from "../../../core/reference/limits";

/** Not filled in, or not enough data. */
export const missing = "NA()";

/** Wrong: out of range, text, a word nobody knows. */
export const wrong = "#VALUE!";

/** As many digits as a cell holds. */
const digits = 15;

/** A figure as it stands in a formula. */
export const figure = (value: Exact | number): string =>
  String(Number(Number(value).toPrecision(digits))).toUpperCase();

export const text = (words: string): string => `"${words.replaceAll('"', '""')}"`;

/** An array constant of one row. */
export const row = (items: readonly string[]): string => `{${items.join(",")}}`;

const joined = (name: string, parts: readonly string[]): string =>
  parts.length === 1 ? (parts[0] ?? "") : `${name}(${parts.join(",")})`;

export const and = (...conditions: readonly string[]): string => joined("AND", conditions);
export const or = (...conditions: readonly string[]): string => joined("OR", conditions);
export const when = (condition: string, then: string, otherwise: string): string =>
  `IF(${condition},${then},${otherwise})`;

/** What a page calls a space that does not break is white space too. */
const unbroken = "\u00a0";

/** A cell's text with every kind of white space as plain spaces. */
export const plainSpaces = (cell: string): string => `SUBSTITUTE(CLEAN(${cell}),"${unbroken}"," ")`;

/** Nothing has been typed: empty, white space, or 0, as in every argument of ours. */
export const isEmpty = (cell: string): string => `OR(${cell}=0,TRIM(${plainSpaces(cell)})="")`;

/**
 * A figure within its limits. Text and, in most programs, TRUE and FALSE are larger than any figure;
 * where a logical value is a number, ISLOGICAL tells it.
 */
export const isWithin = (cell: string, limits: Limits): string[] => [
  `${cell}${limits.fromIncluded ? ">=" : ">"}${limits.from}`,
  `${cell}<=${limits.to}`,
  `NOT(ISLOGICAL(${cell}))`,
];

const isFigure = /^[\d.]+(E[+-]?\d+)?$/;

/** At most a limit, with the slack that the core allows. */
export const atMost = (value: string, limit: string): string =>
  isFigure.test(limit)
    ? `${value}<=${figure(one.plus(slack).times(limit))}`
    : `${value}<=${limit}*${figure(one.plus(slack))}`;

/** At least a limit, with the same slack. */
export const atLeast = (value: string, limit: string): string =>
  isFigure.test(limit)
    ? `${value}>=${figure(one.minus(slack).times(limit))}`
    : `${value}>=${limit}*${figure(one.minus(slack))}`;
