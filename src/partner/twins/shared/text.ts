/**
 * The words plain formulas are made of. Only functions that every spreadsheet program has had for
 * decades: no names that need a prefix in the file, nothing that spills, nothing volatile.
 */
import { slack } from "../../../core/exact/compare";
import { type Exact, exact, one } from "../../../core/exact/exact";
import { type Limits, misses } from "../../../core/reference/limits";
import { constantOf } from "./constant";

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

/** Conditions that are known while the twin is written leave nothing behind. */
export const always = "TRUE";
export const never = "FALSE";

function joined(name: string, parts: readonly string[], settles: string, idle: string): string {
  if (parts.includes(settles)) return settles;
  const open = [...new Set(parts)].filter((part) => part !== idle);
  if (open.length === 0) return idle;
  return open.length === 1 ? (open[0] ?? idle) : `${name}(${open.join(",")})`;
}

export const and = (...conditions: readonly string[]): string =>
  joined("AND", conditions, never, always);
export const or = (...conditions: readonly string[]): string =>
  joined("OR", conditions, always, never);
export function when(condition: string, then: string, otherwise: string): string {
  if (condition === always) return then;
  return condition === never ? otherwise : `IF(${condition},${then},${otherwise})`;
}

/** Texts joined to one: `say` writes them into a sentence, given marks in their place. */
export function spoken(say: (...parts: string[]) => string, ...parts: string[]): string {
  const mark = (index: number): string => `\u0001${index}\u0001`;
  const pieces = say(...parts.map((_, index) => mark(index))).split("\u0001");
  return pieces
    .map((piece, place) => (place % 2 === 1 ? (parts[Number(piece)] ?? "") : text(piece)))
    .filter((piece) => piece !== '""')
    .join("&");
}

/** Rounded to significant digits: for words only. */
export const significant = (value: string, digits: number): string =>
  `ROUND(${value},${digits - 1}-INT(LOG10(${value})))`;

/** What a page calls a space that does not break is white space too. */
const unbroken = "\u00a0";

/** A cell's text with every kind of white space as plain spaces. */
export const plainSpaces = (cell: string): string => `SUBSTITUTE(CLEAN(${cell}),"${unbroken}"," ")`;

/** Nothing has been typed: empty, white space, or 0, as in every argument of ours. */
export function isEmpty(cell: string): string {
  const constant = constantOf(cell);
  if (!constant) return `OR(${cell}=0,TRIM(${plainSpaces(cell)})="")`;
  const { value } = constant;
  return value === 0 || (typeof value === "string" && value.trim() === "") ? always : never;
}

/**
 * A figure within its limits. Text and, in most programs, TRUE and FALSE are larger than any figure;
 * where a logical value is a number, ISLOGICAL tells it.
 */
export function limitsOf(cell: string, limits: Limits): string[] {
  const constant = constantOf(cell);
  if (constant) {
    const { value } = constant;
    return [typeof value === "number" && !misses(exact(value), limits) ? always : never];
  }
  return [
    `${cell}${limits.fromIncluded ? ">=" : ">"}${limits.from}`,
    `${cell}<=${limits.to}`,
    `NOT(ISLOGICAL(${cell}))`,
  ];
}

export const isWithin = (cell: string, limits: Limits): string => and(...limitsOf(cell, limits));

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
