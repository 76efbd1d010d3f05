/**
 * Rows as high as the file says, and high enough for what stands in them: the letters here are wider than
 * those of other programs, and a text that showed whole there must show whole here.
 */
import { BooleanNumber, type IRowData } from "@univerjs/core";
import type { Cell, Look, Sheet } from "../../xlsx";
import { linesIn } from "../../sheet/letters";
import { wrappedLines } from "../../sheet/wrapped-lines";
import { usualSize } from "./file-style";

const pixelsPerPoint = 96 / 72;
/** Height of a line, in sizes of its letters; what stands above and below them, and beside. */
const line = 1.18;
const around = 4;
const beside = 5;

/** What a character of a column's width takes: one more than where the file was made, for the wider letters. */
export const pixelsPerCharacter = 8;

export const columnPixels = (characters: number): number =>
  Math.round(characters * pixelsPerCharacter);

/** Where nothing is said, in pixels. */
export const usualWidth = 73;
export const usualHeight = 24;

/** Points of a line where the file was made, and how many more letters a line took. */
const fileLine = 15;
const fileLetters = 1.1;

const highest = 546;

export interface Standing {
  readonly text: string;
  readonly look: Look;
  readonly pixels: number;
}

const paragraphs = ({ text, look }: Standing): string[] => (look.wraps ? text.split("\n") : [text]);

function pixelsNeeded(standing: Standing): number {
  const { look, pixels } = standing;
  const size = (look.size ?? usualSize) * pixelsPerPoint;
  const room = Math.max(1, (pixels - beside) / size);
  const lines = look.wraps
    ? paragraphs(standing).reduce((sum, words) => sum + linesIn(words, room, !!look.bold), 0)
    : 1;
  return Math.ceil(lines * size * line + around);
}

/** Points it takes in a file that we make. */
export function pointsInFile(standing: Standing): number {
  const characters = Math.max(1, (standing.pixels / pixelsPerCharacter) * fileLetters);
  const lines = paragraphs(standing).reduce(
    (sum, words) => sum + wrappedLines(words, characters).length,
    0,
  );
  return (lines * fileLine * (standing.look.size ?? usualSize)) / usualSize;
}

/** Points it took where it was made, as far as can be told: no more than that, rather than less. */
const pointsThere = (standing: Standing): number => pointsInFile(standing) - 2;

/** Of each row that is not as high as the usual one, in pixels. */
export function rowHeights(
  sheet: Pick<Sheet, "cells" | "heights" | "merged">,
  looks: readonly Look[],
  widthOf: (column: number) => number,
  usual: number,
): Record<number, number> {
  const said = new Map(sheet.heights.map((each) => [each.row, each]));
  const heights: Record<number, number> = {};
  for (const { row, height } of sheet.heights) heights[row] = Math.round(height * pixelsPerPoint);
  const merged = new Set(sheet.merged.map(({ row, column }) => `${String(row)},${String(column)}`));
  const take = ({ row, column, value, look: at }: Cell): void => {
    const look = looks[at];
    if (!look || (!look.wraps && (look.size ?? usualSize) <= usualSize)) return;
    if (merged.has(`${String(row)},${String(column)}`)) return;
    const text = typeof value === "string" ? value : "";
    const standing = { text, look, pixels: widthOf(column) };
    const given = said.get(row);
    // cut off by somebody who wanted it so
    if (given?.isSet && given.height < pointsThere(standing)) return;
    const needed = Math.min(highest, pixelsNeeded(standing));
    if (needed > (heights[row] ?? usual)) heights[row] = needed;
  };
  for (const cell of sheet.cells) take(cell);
  return heights;
}

/** A row whose height somebody set does not follow what stands in it. */
export function rowDataOf(
  heights: Readonly<Record<number, number>>,
  said: Sheet["heights"],
): Record<number, Partial<IRowData>> {
  const set = new Set(said.flatMap(({ row, isSet }) => (isSet ? [row] : [])));
  return Object.fromEntries(
    Object.entries(heights).map(([row, h]) => [
      row,
      { h, ...(set.has(Number(row)) ? { ia: BooleanNumber.FALSE } : {}) },
    ]),
  );
}
