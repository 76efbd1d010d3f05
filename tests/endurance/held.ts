/** What a workbook holds, flat: every filled cell, every sheet, every table's block. */
import type { MemoryBook } from "../host/memory/book";

/** By "sheet!row,column", "sheet:name", "table:name". */
export type Held = Readonly<Record<string, string>>;

export function heldIn({ sheets, tables }: MemoryBook): Held {
  const held: Record<string, string> = {};
  for (const { name, cells } of sheets) {
    held[`sheet:${name}`] = "there";
    for (const place in cells) {
      const cell = cells[place];
      if (!cell || (cell.value === "" && cell.formula === "")) continue;
      held[`${name}!${place}`] = JSON.stringify([cell.value, cell.formula]);
    }
  }
  for (const { name, block } of tables) {
    const { sheet, row, column, rows, columns } = block;
    held[`table:${name}`] = JSON.stringify([sheet, row, column, rows, columns]);
  }
  return held;
}

/** Where two of them differ. */
export const differences = (one: Held, other: Held): string[] => [
  ...Object.keys(one).filter((place) => one[place] !== other[place]),
  ...Object.keys(other).filter((place) => !(place in one)),
];

export const isCell = (place: string): boolean => /!\d+,\d+$/.test(place);

/** Changed places in words, a few of them. */
export const told = (places: readonly string[], before: Held, after: Held): string =>
  places
    .slice(0, 4)
    .map((place) => `${place}: ${before[place] ?? "nothing"} -> ${after[place] ?? "nothing"}`)
    .join("; ") + (places.length > 4 ? ` and ${String(places.length - 4)} more` : "");
