/**
 * Numbers as people type them: 2.45, "2,45", "1.234,5", "2.45 ml", "~2.4". How many digits were typed
 * is kept, since a figure says no more than its digits.
 */
import { unitAlone } from "./heading";

export interface TypedNumber {
  readonly value: number;
  /** Digits after the decimal mark, as typed. */
  readonly decimals: number;
}

/**
 * What the one comma of "1,250" parts where the figure alone does not tell: 1.25 or 1250. Unsaid where
 * nothing in the book does either (comma-habit.ts).
 */
export type Commas = "decimal" | "thousands" | "unsaid";

/** Longer texts are no numbers that anybody typed, and would take their time. */
const longest = 64;

const shape = /^[~<>≈±]?\s*([+-]?[\d.,\s']*\d)\s*(?:%|[a-zµ°/]{1,6})?\.?$/i;

const decimalsOf = (plain: string): number => {
  if (!/e/i.test(plain)) return plain.includes(".") ? plain.length - plain.indexOf(".") - 1 : 0;
  const [mantissa = "", power = "0"] = plain.toLowerCase().split("e");
  return Math.max(0, (mantissa.split(".")[1] ?? "").length - Number(power));
};

const fromPlain = (plain: string): TypedNumber | undefined => {
  const value = Number(plain);
  return Number.isFinite(value) ? { value, decimals: decimalsOf(plain) } : undefined;
};

/** Spaces within a figure part thousands, and nothing else: "1.5 1.6" are two. */
const isOne = (digits: string): boolean =>
  !/\d\s+\d/.test(digits) || /^[+-]?\d{1,3}(?:\s\d{3})+(?:[.,]\d+)?$/.test(digits);

const digitsIn = (text: string): string | undefined => {
  const trimmed = text.trim();
  const digits = trimmed.length > longest ? undefined : shape.exec(trimmed)?.[1];
  return digits !== undefined && isOne(digits) ? digits : undefined;
};

/** "1,250": one comma, before three digits and after a figure that no zero begins. */
const eitherShape = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/** May its comma be either? */
export const isEither = (text: string): boolean =>
  eitherShape.test(figureAndWords(text)?.figure ?? "");

/** A comma that can only be decimal: before other than three digits, after a zero or after points. */
export const hasDecimalComma = (text: string): boolean => {
  const digits = digitsIn(text);
  return digits !== undefined && /^[^,]*,\d+$/.test(digits) && !eitherShape.test(digits);
};

/** Commas that can only part thousands: before a point, or several of them. */
export const hasThousandsComma = (text: string): boolean =>
  /^[+-]?[1-9]\d{0,2}(?:(?:,\d{3})+\.\d+|(?:,\d{3}){2,})$/.test(digitsIn(text) ?? "");

/** A point that can only be decimal: alone, before other than three digits. "12.11" is a day too. */
export const hasDecimalPoint = (text: string): boolean =>
  /^[+-]?(?:0|[1-9]\d*)\.(?:\d{1,2}|\d{4,})$/.test(digitsIn(text) ?? "") &&
  !/^\s*(?:[12]?\d|3[01])\.(?:0?[1-9]|1[0-2])\.?\s*$/.test(text);

/** @param commas what this book's commas mean where one figure alone does not tell */
export function numberFromText(text: string, commas: Commas): TypedNumber | undefined {
  const digits = digitsIn(text)?.replace(/[\s']/g, "");
  if (digits === undefined) return undefined;
  // Where commas are decimal, points part thousands: "10.207" is ten thousand.
  if (commas === "decimal" && /^[+-]?[1-9]\d{0,2}(?:\.\d{3})+$/.test(digits))
    return fromPlain(digits.replace(/\./g, ""));
  const isDecimal = hasDecimalComma(digits) || (commas === "decimal" && eitherShape.test(digits));
  const plain = isDecimal ? digits.replace(/\./g, "").replace(",", ".") : digits.replace(/,/g, "");
  return /^[+-]?\d*\.?\d+$/.test(plain) ? fromPlain(plain) : undefined;
}

/** A number from a cell's value; its digits are those of the shortest text that means it. */
export function numberFrom(value: unknown, commas: Commas): TypedNumber | undefined {
  if (typeof value === "number")
    return Number.isInteger(value) ? { value, decimals: 0 } : fromPlain(String(value));
  return typeof value === "string" ? numberFromText(value, commas) : undefined;
}

const figureAndRest = /^([+-]?\d[\d.,\s']*|[+-]?[.,]\d+)(.*)$/;

/** What a text begins with when it begins with a figure, and what stands behind it: "120", "drums". */
export function figureAndWords(text: string): { figure: string; words: string } | undefined {
  const trimmed = text.trim();
  const found = trimmed.length > longest ? null : figureAndRest.exec(trimmed);
  return found ? { figure: (found[1] ?? "").trim(), words: (found[2] ?? "").trim() } : undefined;
}

/** One comma in a sheet without decimal commas may part thousands or be a slip of the hand. */
const isDoubtful = (figure: string, commas: Commas): boolean =>
  commas !== "decimal" &&
  /^[^.,]*,[^.,]*$/.test(figure) &&
  !(commas === "thousands" && eitherShape.test(figure));

/**
 * A figure that can be worked with: nothing stands beside it but, perhaps, the unit it is in anyway.
 * "2.45" and, in mL, "2.45 mL"; none of "2.90 bad", "~2.4", "2.4?", nor "2,45" where commas are not
 * decimal.
 */
export function figureFrom(
  value: unknown,
  commas: Commas,
  unit: string | undefined,
): TypedNumber | undefined {
  if (typeof value !== "string") return numberFrom(value, commas);
  const parts = figureAndWords(value);
  if (!parts || isDoubtful(parts.figure, commas)) return undefined;
  const isAlone = parts.words === "" || (unit !== undefined && unitAlone(parts.words) === unit);
  return isAlone ? numberFromText(parts.figure, commas) : undefined;
}

/**
 * A figure for all rows as it was typed in the pane, with a point or a comma. One comma before three
 * digits may part thousands: it is no figure.
 */
export function typedFigure(text: string): number | undefined {
  const plain = text.trim();
  if (/^[1-9]\d{0,2},\d{3}$/.test(plain)) return undefined;
  return /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(plain)
    ? Number(plain.replace(",", "."))
    : undefined;
}
