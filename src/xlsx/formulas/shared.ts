/**
 * Shared formulas: files write the text once, for the first cell, and the other cells say "the same,
 * moved". Moving shifts relative rows and columns; one that runs over an edge of the sheet comes in
 * again at the other, as the format has it.
 */
import { columnLetters, columnNumber } from "../../sheet/cell-name";
import { type Token, tokensOf } from "../../sheet/formula/token";
import { limits } from "../limits";

/** One corner: a cell ($B$2), a column ($B) or a row ($2). */
const corner = /(\$?)([A-Za-z]{1,3})(?:(\$?)(\d{1,7}))?|(\$?)(\d{1,7})/g;

const turned = (value: number, all: number): number => ((value % all) + all) % all;

const movedColumn = (dollar: string, letters: string, by: number): string =>
  dollar + (dollar ? letters : columnLetters(turned(columnNumber(letters) + by, limits.columns)));

const movedRow = (dollar: string, digits: string, by: number): string =>
  dollar + (dollar ? digits : String(turned(Number(digits) - 1 + by, limits.rows) + 1));

/** Would a row run over the edge of the sheet? */
const isLost = (dollar: string, digits: string, by: number): boolean =>
  !dollar && turned(Number(digits) - 1 + by, limits.rows) !== Number(digits) - 1 + by;

/** Does any row of a reference run over the edge? */
function runsOver(text: string, rows: number): boolean {
  const body = text.slice(text.lastIndexOf("!") + 1);
  return [...body.matchAll(corner)].some((found) => {
    const [, , , rowDollar = "", row, lineDollar = "", line] = found as (string | undefined)[];
    if (line !== undefined) return isLost(lineDollar, line, rows);
    return row !== undefined && isLost(rowDollar, row, rows);
  });
}

/** A cell, block, columns or rows, with the name of its sheet before it if it has one. */
function movedReference(text: string, rows: number, columns: number): string {
  const body = text.lastIndexOf("!") + 1;
  const moved = text.slice(body).replace(corner, (...found: (string | undefined)[]) => {
    const [, columnDollar = "", letters, rowDollar = "", row, lineDollar = "", line] = found;
    if (line !== undefined) return movedRow(lineDollar, line, rows);
    const column = movedColumn(columnDollar, letters ?? "", columns);
    return row === undefined ? column : column + movedRow(rowDollar, row, rows);
  });
  return text.slice(0, body) + moved;
}

const isMoving = ({ kind }: Token): boolean => kind === "cells" || kind === "lines";

/**
 * What filling down writes: a reference that runs over the edge of the sheet is lost.
 * @example filledDown("=A5*$B$1+Log[[#This Row],[Lot]]", 1) // "=A6*$B$1+Log[[#This Row],[Lot]]"
 */
export const filledDown = (formula: string, rows: number): string =>
  tokensOf(formula)
    .map((token) => {
      if (!isMoving(token)) return token.text;
      return runsOver(token.text, rows) ? "#REF!" : movedReference(token.text, rows, 0);
    })
    .join("");

/** A formula cut once, to be written for many cells. */
export class SharedFormula {
  private readonly tokens: readonly Token[];

  /** `row` and `column` are those of the cell that holds the text. */
  constructor(
    text: string,
    private readonly row: number,
    private readonly column: number,
  ) {
    this.tokens = tokensOf(text);
  }

  /** The text for another cell. */
  at(row: number, column: number): string {
    const rows = row - this.row;
    const columns = column - this.column;
    return this.tokens
      .map((token) => (isMoving(token) ? movedReference(token.text, rows, columns) : token.text))
      .join("");
  }
}
