/**
 * Where the texts of a new sheet are wrapped, and how high their rows are: programs differ in what
 * they make of a row that does not say.
 */
import type { BookCell, BookSheet } from "../sheet/book";
import { wrappedLines } from "../sheet/wrapped-lines";

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

function linesIn({ value, style }: BookCell, width: number): number {
  const room = width * (style === "heading" ? boldFits : fits);
  return typeof value === "string" ? wrappedLines(value, room).length : 1;
}

/**
 * Rows and their heights in points, of those that take more than a line. What a formula says is another text
 * tomorrow: such a row is as high as programs make it.
 */
export function fixedHeights(sheet: BookSheet): (readonly [number, number])[] {
  return sheet.rows.flatMap((row, place) => {
    if (row.some((cell) => cell?.style === "title")) return [[place, titleHeight] as const];
    if (row.some((cell) => cell?.style === "large")) return [[place, largeHeight] as const];
    const wrapped = row.flatMap((cell, column) =>
      cell && cell.formula === undefined && isWrapped(sheet, place, column)
        ? [{ cell, width: sheet.columnWidths[column] ?? 8 }]
        : [],
    );
    const lines = Math.max(1, ...wrapped.map(({ cell, width }) => linesIn(cell, width)));
    return lines > 1 ? [[place, lines * lineHeight] as const] : [];
  });
}
