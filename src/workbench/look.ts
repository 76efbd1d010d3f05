/** How cells look: ink and paper of the page, a background for what one types, none for what is worked out. */
import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { BookCell, BookStyle } from "../workbook/book";

export const tableThemeName = "titrebook";

/** Six pixels and a half a character, and room at the sides. */
export const columnWidth = (characters: number): number => Math.round(characters * 6.5 + 16);

const bold = { bl: BooleanNumber.TRUE };
const wrapped = { tb: WrapStrategy.WRAP, vt: VerticalAlign.TOP };

const styles: Record<BookStyle, IStyleData> = {
  title: { ...bold, fs: 16, cl: { rgb: "#12343b" }, vt: VerticalAlign.MIDDLE },
  heading: {
    ...bold,
    cl: { rgb: "#12343b" },
    bg: { rgb: "#dfeaea" },
    tb: WrapStrategy.WRAP,
    vt: VerticalAlign.BOTTOM,
  },
  input: { bg: { rgb: "#fff8e1" } },
  calculated: { cl: { rgb: "#0b4f58" } },
  words: wrapped,
  caution: { ...wrapped, ...bold, cl: { rgb: "#7a2e0e" }, bg: { rgb: "#fdf1e7" } },
};

export function cellStyle(cell: BookCell): IStyleData | undefined {
  if (!cell.style && !cell.format) return undefined;
  return {
    ...(cell.style ? styles[cell.style] : {}),
    ...(cell.format ? { n: { pattern: cell.format }, ht: HorizontalAlign.RIGHT } : {}),
  };
}
