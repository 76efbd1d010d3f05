/**
 * Figures in formulas, in a spelling that the embedded engine can read. It takes a figure for one only
 * as it would write it itself: 2.50, .5, 012 and 9.99E+307 are texts to it, which no figure equals.
 */
import { tokensOf } from "../../../sheet/formula/token";

/** What only figures in another spelling have, and much else. */
const perhaps = /\d\.|\.\d|\de|(?<![\d$A-Za-z])0\d/i;

function inItsSpelling(text: string): string {
  const figure = Number(text);
  return Number.isFinite(figure) ? String(figure) : text;
}

/** @example withPlainNumerals("=A1*2.50+{.5}") // "=A1*2.5+{0.5}" */
export const withPlainNumerals = (formula: string): string =>
  perhaps.test(formula)
    ? tokensOf(formula)
        .map(({ kind, text }) => (kind === "number" ? inItsSpelling(text) : text))
        .join("")
    : formula;
