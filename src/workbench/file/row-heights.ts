/** Rows tall enough for what stands in them: large letters, and text that is wrapped in its column. */
import type { Cell, Look, Sheet } from "../../xlsx";
import { wrappedLines } from "../../sheet/wrapped-lines";
import { usualSize } from "./file-style";

/** Pixels a line takes for each point of its letters, and what stands above and below. */
const perPoint = 1.55;
const around = 4;

function lines({ value }: Cell, { wraps, size = usualSize }: Look, pixels: number): number {
  if (typeof value !== "string") return 1;
  // letters grow with their size: one of 11 points takes 7 pixels
  const characters = Math.max(1, Math.floor((pixels * usualSize) / (7 * size)));
  const paragraphs = value.split("\n");
  if (!wraps) return 1;
  return paragraphs.reduce((sum, words) => sum + wrappedLines(words, characters).length, 0);
}

/** Of each row that needs more than the usual height. */
export function rowHeights(
  sheet: Sheet,
  looks: readonly Look[],
  widthOf: (column: number) => number,
  usual: number,
): Record<number, number> {
  const heights: Record<number, number> = {};
  const covered = new Set(
    sheet.merged.map(({ row, column }) => `${String(row)},${String(column)}`),
  );
  for (const cell of sheet.cells) {
    const look = looks[cell.look];
    if (!look || (!look.wraps && (look.size ?? usualSize) <= usualSize)) continue;
    if (covered.has(`${String(cell.row)},${String(cell.column)}`)) continue;
    const needed = lines(cell, look, widthOf(cell.column)) * (look.size ?? usualSize) * perPoint;
    const height = Math.min(400, Math.ceil(needed + around));
    if (height > (heights[cell.row] ?? usual)) heights[cell.row] = height;
  }
  return heights;
}
