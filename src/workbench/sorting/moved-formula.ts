/**
 * A formula that goes to another row with its row: what refers to cells of its own row goes along, what
 * is fixed stays, and so does what refers to another sheet. One that refers to some other row by its
 * distance would refer to a stranger there: such a formula cannot be moved.
 */
import { refused, type Refusal } from "../../sheet/refusal";
import { type Token, tokensOf } from "../../sheet/formula/token";
import { filledDown } from "../../xlsx/formulas/shared";

/** The row of each corner that goes by distance, counted from 0. */
function looseRows(text: string): number[] {
  const corners = text.matchAll(/(?:\$?[A-Z]{1,3})(\$?)(\d{1,7})|(?<![A-Z\d])(\$?)(\d{1,7})/gi);
  return [...corners].flatMap(([, cellFixed = "", cell, lineFixed = "", line]) =>
    cellFixed + lineFixed === "" ? [Number(cell ?? line) - 1] : [],
  );
}

const body = (text: string): string => text.slice(text.lastIndexOf("!") + 1);

/** The sheet it names, without quotes; undefined where it names none. */
function sheetIn(text: string): string | undefined {
  const end = text.lastIndexOf("!");
  if (end < 0) return undefined;
  return text.slice(0, end).replace(/^'|'$/g, "").replaceAll("''", "'");
}

const isReference = ({ kind }: Token): boolean => kind === "cells" || kind === "lines";

export interface Journey {
  readonly sheet: string;
  /** Rows counted from 0. */
  readonly from: number;
  readonly to: number;
}

const isOwn = ({ text }: Token, sheet: string): boolean => {
  const named = sheetIn(text);
  return named === undefined || named.toLowerCase() === sheet.toLowerCase();
};

/** What a refused formula refers to, as it is written, is the sentence of the refusal. */
export function movedFormula(formula: string, { sheet, from, to }: Journey): string | Refusal {
  const parts: string[] = [];
  for (const token of tokensOf(formula)) {
    if (!isReference(token) || !isOwn(token, sheet)) {
      parts.push(token.text);
      continue;
    }
    if (looseRows(body(token.text)).some((row) => row !== from)) return refused(token.text);
    parts.push(filledDown(`=${token.text}`, to - from).slice(1));
  }
  return parts.join("");
}

interface Placed {
  readonly formula: string;
  readonly row: number;
}

/** Do all say the same, each for its own row? Then they can stay where they are when rows move. */
export function isOneFormula(formulas: readonly Placed[], sheet: string): boolean {
  const [first] = formulas;
  if (!first) return true;
  const goesElsewhere = tokensOf(first.formula).some(
    (token) => isReference(token) && !isOwn(token, sheet) && looseRows(body(token.text)).length > 0,
  );
  if (goesElsewhere) return false;
  return formulas.every(
    ({ formula, row }) => formula === filledDown(first.formula, row - first.row),
  );
}
