/**
 * A formula cut into tokens that know where they stand, so that a rewriter can put new text in place
 * of one and leave every other character alone. The cutting is done by a kept library (@borgar/fx);
 * this file is the only one that names its kinds.
 */
import { tokenize } from "@borgar/fx";
import { masked } from "./mask";
import { isReadable } from "./readable";

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

function kindOf(found: { type: string; unterminated?: boolean }, text: string): TokenKind {
  if (found.unterminated) return "open-text";
  const kind = kinds[found.type] ?? "unknown";
  return kind === "operator" && text.trim() === "" ? "space" : kind;
}

/** A function's name may have letters that the tokenizer takes for those of a defined name alone. */
const isCalled = (kind: TokenKind, text: string, next: string | undefined): boolean =>
  kind === "name" && next === "(" && !text.includes("!");

/**
 * Cuts any text. The tokens joined are the text again, character for character. A text that is not
 * looked into is one token, of a kind that no formula has.
 * @example tokensOf("=A1+2").map((token) => token.text) // ["=", "A1", "+", "2"]
 */
export function tokensOf(formula: string): Token[] {
  if (!isReadable(formula)) {
    return [{ kind: "unknown", text: formula, start: 0, end: formula.length }];
  }
  let start = 0;
  return tokenize(masked(formula), { withLocation: false, negativeNumbers: false }).map((found) => {
    const end = start + found.value.length;
    const text = formula.slice(start, end);
    const kind = kindOf(found, text);
    const token: Token = {
      kind: isCalled(kind, text, formula[end]) ? "function" : kind,
      text,
      start,
      end,
    };
    start = end;
    return token;
  });
}
