/**
 * The one formula reader: a formula's text to its tokens and its tree. Used to explain a cell, and by
 * everything that rewrites or checks formulas. A broken formula is a problem that says what is wrong
 * and where; nothing a cell can hold makes it throw or hang.
 */
import { sheetLimits } from "../spreadsheet-limits";
import { type Outcome, isProblem, problem } from "../../core/problem/problem";
import { Cursor } from "./cursor";
import { readExpression } from "./expression";
import { remembered } from "./remembered";
import { type Token, tokensOf } from "./token";
import type { Expression } from "./tree";

export interface Formula {
  readonly text: string;
  /** Joined they are the text again, character for character. */
  readonly tokens: readonly Token[];
  readonly tree: Expression;
}

const longest = sheetLimits.formula;

/** What stands after a whole expression has no place there. */
const trailing = (token: Token) =>
  token.kind === "operator" && /^[),;}!]$/.test(token.text) ? "stray" : "operator-missing";

/**
 * Reads a formula, with or without its equals sign. English function names, commas, full stops.
 * @example readFormula("=2*A1") // { text, tokens, tree }
 */
export const readFormula: (text: string) => Outcome<Formula> = remembered(readAnew);

function readAnew(text: string): Outcome<Formula> {
  const broken = (trouble: "empty" | "too-long") =>
    problem({ code: "broken-formula", trouble, at: 1, found: "" });
  if (text.length > longest) return broken("too-long");
  const tokens = tokensOf(text);
  const cursor = new Cursor(tokens, text.length);
  if (!cursor.here) return broken("empty");
  const tree = readExpression(
    { cursor, depth: 0, commaJoins: true, expression: readExpression },
    0,
  );
  if (isProblem(tree)) return tree;
  return cursor.here ? cursor.broken(trailing(cursor.here)) : { text, tokens, tree };
}

/** The text of part of a formula, as written. */
export const textOf = (formula: Formula, part: { start: number; end: number }): string =>
  formula.text.slice(part.start, part.end);
