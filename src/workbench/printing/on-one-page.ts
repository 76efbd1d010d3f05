/** A sheet that says where its second page begins: what stands before is one page, however many rows. */
import type { IStyleData } from "@univerjs/core";
import type { PrintedPart, PrintedRow } from "./printed-parts";

/** Of the 1046 or 718 pixels down a page of A4: lines between cells grow no thinner with the letters. */
const down = { upright: 980, lying: 670 } as const;

/** Of a letter's size: a line, and what is above and below it in a cell. */
const line = 1.15;
const aroundLine = 3;
const usualSize = 11;
const leastHeight = 8;

const lineHeight = (style: IStyleData | undefined): number =>
  ((style?.fs ?? usualSize) * 96 * line) / 72 + aroundLine;

/** As high as its letters: on the screen rows are higher, and that room is wanted for more of them. */
function low(row: PrintedRow): PrintedRow {
  const needed = row.cells
    .filter(({ text }) => text !== "")
    .reduce((most, { style }) => Math.max(most, lineHeight(style)), leastHeight);
  return { ...row, height: needed };
}

const heightOf = (rows: readonly PrintedRow[]): number =>
  rows.reduce((sum, { height }) => sum + height, 0);

/** @param before how many rows stand on the first page */
export function onPages(
  part: PrintedPart,
  before: number,
  { isLandscape, scale, smallest }: { isLandscape: boolean; scale: number; smallest: number },
): readonly PrintedPart[] {
  const room = down[isLandscape ? "lying" : "upright"] / scale;
  return [part.rows.slice(0, before), part.rows.slice(before)]
    .filter((rows) => rows.length > 0)
    .map((rows): PrintedPart => {
      const lower = rows.map(low);
      const fits = Math.min(1, room / heightOf(lower));
      return { ...part, rows: lower, scale: fits < smallest ? 1 : fits };
    });
}
