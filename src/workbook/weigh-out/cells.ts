/** The cells the sheet is made of. */
import type { BookCell, BookValue } from "../../sheet/book";

export type Row = (BookCell | null)[];

export const box: BookCell = { value: "☐", style: "large" };
export const text = (value: BookValue): BookCell => ({ value, style: "words" });
export const heading = (...words: string[]): Row => [
  null,
  ...words.map((value): BookCell => ({ value, style: "heading" })),
];
export const large = (formula: string, format: string): BookCell => ({
  formula,
  format,
  style: "large",
});
export const worked = (formula: string, format = "General"): BookCell => ({
  formula,
  format,
  style: "calculated",
});
export const given = (value: BookValue, format?: string): BookCell => ({
  value,
  style: "input",
  ...(format === undefined ? {} : { format }),
});
