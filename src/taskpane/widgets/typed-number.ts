/**
 * A number as a person types it, with a decimal comma or a decimal point. Both are understood
 * wherever one lives; what could be read in two ways is refused, never guessed. So a text that is
 * read in two countries is either the same number in both, or refused in one of them.
 */
import { type Exact, exact } from "../../core/exact/exact";

/** What stands between units and tenths where this person lives. */
export type DecimalMark = "." | ",";

export type Typed =
  | { readonly kind: "empty" }
  | { readonly kind: "number"; readonly value: Exact; readonly plain: string }
  /** "1,234" where the point is usual: 1.234, or 1234 with a mark between thousands? */
  | { readonly kind: "ambiguous"; readonly small: string; readonly large: string }
  /** More than one mark: "1,234.5". */
  | { readonly kind: "grouped" }
  | { readonly kind: "unreadable" }
  | { readonly kind: "too-long" };

/** A cell keeps fifteen digits. */
const mostDigits = 15;

const number = /^([+-]?)(\d*)(?:([.,])(\d*))?$/;
const grouped = /^[+-]?\d{1,3}([.,' ]\d{3})+([.,]\d*)?$/;

/** Could the digits before a mark be thousands? "0,250" and "1234,500" cannot. */
const mayBeThousands = (whole: string, tenths: string): boolean =>
  tenths.length === 3 && /^[1-9]\d{0,2}$/.test(whole);

/**
 * @example readTyped("2,35", ".") // 2.35
 * @example readTyped("1,234", ".") // ambiguous
 */
export function readTyped(text: string, mark: DecimalMark): Typed {
  const trimmed = text
    .trim()
    .replace(/[\u00a0\u202f]/g, " ")
    .replace(/^\u2212/, "-");
  if (trimmed === "") return { kind: "empty" };
  const [, sign = "", whole = "", found, tenths = ""] = number.exec(trimmed) ?? [];
  if (whole === "" && tenths === "") {
    return { kind: grouped.test(trimmed) ? "grouped" : "unreadable" };
  }
  if (found !== undefined && found !== mark && mayBeThousands(whole, tenths)) {
    return { kind: "ambiguous", small: `${whole}${mark}${tenths}`, large: `${whole}${tenths}` };
  }
  const digits = `${whole}${tenths}`.replace(/^0+/, "");
  if (digits.length > mostDigits) return { kind: "too-long" };
  const minus = sign === "-" ? "-" : "";
  const plain = `${minus}${whole === "" ? "0" : whole}${tenths === "" ? "" : `.${tenths}`}`;
  return { kind: "number", value: exact(plain), plain };
}

/** The decimal mark of a locale; a point where the locale is unknown. */
export function decimalMarkOf(locale: string): DecimalMark {
  try {
    const parts = new Intl.NumberFormat(locale).formatToParts(1.5);
    return parts.some((part) => part.type === "decimal" && part.value === ",") ? "," : ".";
  } catch {
    return ".";
  }
}

/** A figure, or a sentence with figures in it, with the decimal mark of this person. */
export const withMark = (text: string, mark: DecimalMark): string =>
  mark === "." ? text : text.replace(/(\d)\.(?=\d)/g, "$1,");
