/** What is typed into the name box: how far a sheet must reach for it, or that it is no address. */
import { columnNumber } from "../sheet/cell-name";

export interface Extent {
  readonly rows: number;
  readonly columns: number;
}

/** A cell, a column or a row. */
const place = /^\$?([A-Z]{0,3})\$?(\d*)$/i;

/**
 * Undefined for what is not looked at: cells of another sheet, and a word without a digit, which names the
 * selected cell on purpose.
 */
export function addressTyped(typed: string): Extent | "none" | undefined {
  const text = typed.trim();
  if (!/\d/.test(text) || text.includes("!")) return undefined;
  const ends = text.split(":").map((each) => {
    const [, letters = "", digits = ""] = place.exec(each) ?? [];
    return { letters, digits };
  });
  const isEnd = ({ letters, digits }: (typeof ends)[number]): boolean =>
    ends.length === 1 ? letters !== "" && digits !== "" : letters !== "" || digits !== "";
  if (
    ends.length > 2 ||
    !ends.every(isEnd) ||
    ends.some(({ digits }) => Number(digits) === 0 && digits !== "")
  ) {
    return "none";
  }
  return {
    rows: Math.max(...ends.map(({ digits }) => Number(digits))),
    columns: Math.max(...ends.map(({ letters }) => columnNumber(letters) + 1)),
  };
}
