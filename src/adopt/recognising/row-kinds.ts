/** What a row of cells looks like: words, figures, units. */
import { unitAlone } from "./heading";
import { endOf, heldCell, type SheetCells } from "./sheet-cells";
import { dateFromText } from "./typed-date";
import { numberFromText } from "./typed-number";

const longestHeading = 60;

/** A word that could be a heading, and is no figure and no day. */
export function isWord(value: unknown): boolean {
  if (typeof value !== "string") return false;
  const text = value.trim();
  if (text === "" || text.length > longestHeading) return false;
  return (
    dateFromText(text) === undefined &&
    (numberFromText(text, "decimal") === undefined ||
      unitAlone(text) !== undefined ||
      /^[a-z]/i.test(text))
  );
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Runs of places that are filled. */
export function runs(from: number, to: number, isFilled: (at: number) => boolean): Span[] {
  const found: Span[] = [];
  let start: number | undefined;
  for (let at = from; at <= to; at += 1) {
    if (at < to && isFilled(at)) start ??= at;
    else if (start !== undefined) {
      found.push({ from: start, to: at - 1 });
      start = undefined;
    }
  }
  return found;
}

export const countIn = (
  cells: SheetCells,
  row: number,
  span: Span,
  test: (value: unknown) => boolean,
): number => {
  let count = 0;
  for (let column = span.from; column <= span.to; column += 1) {
    if (test(heldCell(cells, row, column).value)) count += 1;
  }
  return count;
};

export const isFigure = (value: unknown): boolean =>
  typeof value === "number" ||
  (typeof value === "string" &&
    (numberFromText(value, "decimal") !== undefined || dateFromText(value) !== undefined));

/** Words in a row with figures below them, in the same columns. */
export function isHeadingRow(cells: SheetCells, row: number, span: Span, lastRow: number): boolean {
  const words = countIn(cells, row, span, isWord);
  const figures = countIn(cells, row, span, isFigure);
  const width = span.to - span.from + 1;
  if (words < Math.min(3, width) || words < 2 || figures > words) return false;
  if (words + figures < width * 0.5) return false;
  const below = Array.from({ length: Math.min(6, lastRow - row) }, (_, at) => row + 1 + at);
  const data = below.filter((each) => {
    const held = countIn(cells, each, span, (value) => value !== "");
    const numbers = countIn(cells, each, span, isFigure);
    return numbers >= 1 && numbers >= held * 0.25;
  });
  return data.length >= 1;
}

export function isUnitsRow(cells: SheetCells, row: number, span: Span): boolean {
  const held = countIn(cells, row, span, (value) => value !== "");
  const units = countIn(
    cells,
    row,
    span,
    (value) => typeof value === "string" && unitAlone(value) !== undefined,
  );
  const figures = countIn(cells, row, span, (value) => typeof value === "number");
  return figures === 0 && units >= 2 && units >= held * 0.5;
}

/** Rows that look like headings at once: four words or more and no figure. */
export function rowsOfWords(cells: SheetCells, end: number): number[] {
  const span = { from: cells.column, to: endOf(cells).column - 1 };
  const found: number[] = [];
  for (let row = cells.row; row < Math.min(end, cells.row + 60); row += 1) {
    if (countIn(cells, row, span, isWord) >= 4 && countIn(cells, row, span, isFigure) === 0)
      found.push(row);
  }
  return found;
}
