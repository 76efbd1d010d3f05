/** The cells the printed card is made of. */
import type { BookCell, BookValue } from "../../sheet/book";

export type Row = (BookCell | null)[];

export const box: BookCell = { value: "☐", style: "title" };
export const text = (value: BookValue): BookCell => ({ value });
export const big = (value: BookValue): BookCell => ({ value, style: "large" });
export const heading = (...words: string[]): Row => [
  null,
  ...words.map((value): BookCell => ({ value, style: "heading" })),
];

/** Room to write by hand. */
export const blank = (letters: number): string => "_".repeat(letters);
