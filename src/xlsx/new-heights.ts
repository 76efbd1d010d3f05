/**
 * Where the texts of a new sheet are wrapped, and how high their rows are: programs differ in what
 * they make of a row that does not say.
 */
import type { BookCell, BookSheet } from "../sheet/book";
import { wrappedLines } from "../sheet/wrapped-lines";
import type { RowHeight } from "./model";

/** Columns so wide are made for sentences. */
const forSentences = 40;

/** In points. */
const lineHeight = 15;
const titleHeight = 22;
const largeHeight = 32;

/** Letters that fit for each one of a column's width, in the wider of the types programs choose. */
const fits = 1.1;
const boldFits = 1;

/** Headings are wrapped, and sentences in their own columns; a sentence alone in a row runs on. */
export function isWrapped({ rows, columnWidths }: BookSheet, row: number, column: number): boolean {
  const cells = rows[row] ?? [];
  const style = cells[column]?.style;
  if (style === "title" || style === undefined) return false;
  if (style === "heading") return true;
  const isAlone = cells.length === 1 && columnWidths.length > 1;
  return (columnWidths[column] ?? 0) >= forSentences && !isAlone;
}

function linesIn({ value, style, formula, results }: BookCell, width: number): number {
  const room = width * (style === "heading" ? boldFits : fits);
  const shown = formula === undefined ? value : (results?.[0]?.[0] ?? value);
  return typeof shown === "string" ? wrappedLines(shown, room).length : 1;
}

/**
 * Rows and their heights in points, of those that take more than a line. What a formula says is another text
 * tomorrow: such a row is as high as it needs now, and is not set, so that programs fit it again.
 */
export function newHeights(sheet: BookSheet): RowHeight[] {
  return sheet.rows.flatMap((row, place): RowHeight[] => {
    const set = (height: number) => [{ row: place, height, isSet: true }];
    if (row.some((cell) => cell?.style === "title")) return set(titleHeight);
    if (row.some((cell) => cell?.style === "large")) return set(largeHeight);
    const wrapped = row.flatMap((cell, column) =>
      cell && isWrapped(sheet, place, column)
        ? [{ cell, lines: linesIn(cell, sheet.columnWidths[column] ?? 8) }]
        : [],
    );
    const lines = Math.max(1, ...wrapped.map((each) => each.lines));
    if (lines === 1) return [];
    const isSet = wrapped.every(({ cell }) => cell.formula === undefined);
    return [{ row: place, height: lines * lineHeight, isSet }];
  });
}
