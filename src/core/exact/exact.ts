/**
 * Exact decimal numbers. This folder is the only importer of decimal.js; everybody else sees the
 * type `Exact` and its methods (plus, minus, times, div, and the comparisons).
 *
 * 34 significant digits, halves away from zero, as a spreadsheet's ROUND does.
 */
import Decimal from "decimal.js";

const ExactDecimal = Decimal.clone({ precision: 34, rounding: Decimal.ROUND_HALF_UP });

export type Exact = Decimal;

/** Beyond this a double's 15-digit form is no longer its integer value. */
const largestPlainInteger = 1e15;
/** A double with a point whose shortest text is no longer than this has 15 digits or fewer. */
const longestShortText = 16;

/**
 * An exact number from digits, or from a double read out of a cell.
 * A double enters through its 15-digit decimal form, the form a spreadsheet shows, so that the
 * 0.30000000000000004 which a cell computed from 0.1 + 0.2 is the 0.3 its owner means.
 * @example exact("2.35").minus(exact(0.05)).toString() // "2.3"
 */
export function exact(value: string | number): Exact {
  if (typeof value === "string") return new ExactDecimal(value);
  if (Number.isInteger(value)) {
    return new ExactDecimal(Math.abs(value) < largestPlainInteger ? value : value.toPrecision(15));
  }
  const shortest = String(value);
  return new ExactDecimal(shortest.length <= longestShortText ? shortest : value.toPrecision(15));
}

/**
 * A double worked out here (a square root, a Student t), with every digit it has: it is not a reading
 * and owes nothing to the 15 digits a cell shows.
 */
export const computed = (value: number): Exact => new ExactDecimal(value);

export const zero: Exact = exact(0);
export const one: Exact = exact(1);
export const ten: Exact = exact(10);
export const hundred: Exact = exact(100);
export const thousand: Exact = exact(1000);

/** Is this value one of ours? (A cell may hold anything.) */
export const isExact = (value: unknown): value is Exact => Decimal.isDecimal(value);
