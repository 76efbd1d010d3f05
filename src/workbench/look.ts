/** How cells look: the ink of the page, a background for what one types, none for what is worked out. */
import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { BookCell, BookStyle } from "../sheet/book";
import { wrappedLines } from "../sheet/wrapped-lines";

export const tableThemeName = "titrebook";

/** What a column takes when its sheet does not say. */
export const usualCharacters = 12;

/** What every cell has. */
export const usualStyle: IStyleData = { fs: 10 };

/** Six pixels a character, and room at the sides. */
export const columnWidth = (characters: number): number => characters * 6 + 14;

/** ... and back. */
export const charactersIn = (pixels: number): number => (pixels - 14) / 6;

const rowHeight = 24;
const lineHeight = 18;
/** Bold letters that fit in the room for one of the width's characters. */
const boldFits = 0.85;

const bold = { bl: BooleanNumber.TRUE };
const ink = { rgb: "#14303a" };
const wrapped = { tb: WrapStrategy.WRAP };
const middle = { vt: VerticalAlign.MIDDLE };
const base = { ...usualStyle, pd: { l: 5, r: 5 } };

const styles: Record<BookStyle, IStyleData> = {
  title: { ...bold, ...middle, fs: 15, cl: { rgb: "#12343b" } },
  heading: {
    ...bold,
    ...wrapped,
    cl: { rgb: "#12343b" },
    bg: { rgb: "#dfeaea" },
    vt: VerticalAlign.BOTTOM,
    pd: { l: 5, r: 5, b: 4 },
  },
  input: { ...middle, cl: ink, bg: { rgb: "#fffaea" } },
  calculated: { ...middle, cl: { rgb: "#0b5b65" } },
  words: { ...middle, cl: ink },
  large: { ...bold, ...middle, fs: 22, cl: ink },
  caution: { ...middle, cl: { rgb: "#7a2e0e" }, bg: { rgb: "#fdf1e7" } },
};

/** Sentences run on over empty cells beside them; in a column made for sentences they are wrapped. */
const isWrapped = (cell: BookCell, characters: number): boolean =>
  cell.style === "heading" ||
  ((cell.style === "words" || cell.style === "caution") && characters >= 60);

export function cellStyle(cell: BookCell, characters: number): IStyleData | undefined {
  if (!cell.style && !cell.format) return undefined;
  return {
    ...base,
    ...(cell.style ? styles[cell.style] : {}),
    ...(isWrapped(cell, characters) ? wrapped : {}),
    ...(cell.format ? { n: { pattern: cell.format } } : {}),
    ...(cell.format && cell.format !== "General" ? { ht: HorizontalAlign.RIGHT } : {}),
  };
}

/** Tall enough for the lines of the cell that needs most of them. */
export function heightFor(cell: BookCell, characters: number): number {
  if (cell.style === "title" || cell.style === "large") return 36;
  if (typeof cell.value !== "string" || !isWrapped(cell, characters)) return rowHeight;
  // A heading's words are not cut: the longest takes a line of its own.
  const lines =
    cell.style === "heading"
      ? wrappedLines(cell.value, Math.floor(characters * boldFits)).length
      : Math.ceil(cell.value.length / characters);
  return Math.max(rowHeight, lines * lineHeight + 10);
}
