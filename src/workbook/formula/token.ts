/**
 * A formula cut into tokens that know where they stand, so that a rewriter can put new text in place
 * of one and leave every other character alone. The cutting is done by a kept library (@borgar/fx);
 * this file is the only one that names its kinds.
 */
import { tokenize } from "@borgar/fx";
import { masked } from "./mask";

export type TokenKind =
  | "equals-sign"
  | "space"
  | "number"
  | "text"
  | "open-text"
  | "boolean"
  | "error"
  | "cells"
  | "lines"
  | "name"
  | "structured"
  | "function"
  | "sheet"
  | "operator"
  | "unknown";

export interface Span {
  /** Of the first character, counted from 0. */
  readonly start: number;
  /** Of the character after the last. */
  readonly end: number;
}

export interface Token extends Span {
  readonly kind: TokenKind;
  readonly text: string;
}

const kinds: Readonly<Record<string, TokenKind>> = {
  fx_prefix: "equals-sign",
  whitespace: "space",
  newline: "space",
  number: "number",
  string: "text",
  bool: "boolean",
  error: "error",
  range: "cells",
  range_beam: "lines",
  range_named: "name",
  structured: "structured",
  func: "function",
  context: "sheet",
  context_quote: "sheet",
  operator: "operator",
};

/**
 * Cuts any text. The tokens joined are the text again, character for character.
 * @example tokensOf("=A1+2").map((token) => token.text) // ["=", "A1", "+", "2"]
 */
export function tokensOf(formula: string): Token[] {
  let start = 0;
  return tokenize(masked(formula), { withLocation: false, negativeNumbers: false }).map((found) => {
    const end = start + found.value.length;
    const kind = found.unterminated ? "open-text" : (kinds[found.type] ?? "unknown");
    const token: Token = { kind, text: formula.slice(start, end), start, end };
    start = end;
    return token;
  });
}
