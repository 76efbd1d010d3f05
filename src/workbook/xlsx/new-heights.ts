/**
 * Heights of rows whose texts are wrapped and stay as they are: programs differ in what they make of
 * a row that does not say. Rows with formulas are left to the program.
 */
import type { BookCell, BookSheet } from "../book";

/** Columns so wide are made for sentences, which are wrapped there; elsewhere they run on. */
export const forSentences = 40;

const lineHeight = 15;
const titleHeight = 22;

/** Letters that fit for each one of a column's width, in the wider of the types programs choose. */
const fits = 1.05;
const boldFits = 0.9;

/** How many lines words take that are not cut. */
function linesOf(text: string, room: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(" ")) {
    const needed = used === 0 ? word.length : used + 1 + word.length;
    if (needed > room && used > 0) lines += 1;
    used = needed > room ? word.length : needed;
  }
  return lines;
}

function linesIn({ value, style }: BookCell, width: number): number {
  if (typeof value !== "string" || style === undefined) return 1;
  if (style === "heading") return linesOf(value, width * boldFits);
  return width >= forSentences ? linesOf(value, width * fits) : 1;
}

const isTitle = (row: readonly (BookCell | null)[]): boolean =>
  row.some((cell) => cell?.style === "title");

/** Rows and their heights in points, of those that take more than a line. */
export function fixedHeights({ rows, columnWidths }: BookSheet): (readonly [number, number])[] {
  return rows.flatMap((row, place) => {
    if (row.some((cell) => cell?.formula !== undefined)) return [];
    if (isTitle(row)) return [[place, titleHeight] as const];
    const lines = Math.max(
      1,
      ...row.map((cell, column) => (cell ? linesIn(cell, columnWidths[column] ?? 8) : 1)),
    );
    return lines > 1 ? [[place, lines * lineHeight] as const] : [];
  });
}
