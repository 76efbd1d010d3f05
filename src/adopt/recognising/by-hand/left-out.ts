/** Rows that a person leaves out by hand: read as if nothing stood in them. Where lots stand across, columns. */
import { columnLetters, columnNumber } from "../../../sheet/cell-name";
import type { LogbookMapping } from "../shape";
import type { SheetCells } from "../sheet-cells";

/** More than anybody types. */
const most = 2000;

/** A row as it is counted on the sheet, from 1; a column by its letters. */
export const placeText = (row: number, isAcross: boolean): string =>
  isAcross ? columnLetters(row) : String(row + 1);

/** The row, counted from 0; undefined where the words are none. */
export function placeTyped(words: string, isAcross: boolean): number | undefined {
  const text = words.trim();
  if (isAcross) return /^[a-z]{1,3}$/i.test(text) ? columnNumber(text.toUpperCase()) : undefined;
  return /^[1-9]\d{0,6}$/.test(text) ? Number(text) - 1 : undefined;
}

/** "12, 15-18" as rows counted from 0; undefined where a part is no row. */
export function rowsTyped(text: string, isAcross: boolean): readonly number[] | undefined {
  const found = new Set<number>();
  for (const part of text.replace(/\s*[-–]\s*/g, "-").split(/[,;\s]+/)) {
    if (part === "") continue;
    const ends = part.split("-").map((each) => placeTyped(each, isAcross));
    const [from] = ends;
    const to = ends.at(-1);
    if (from === undefined || to === undefined || ends.length > 2) return undefined;
    if (to < from || to - from > most) return undefined;
    for (let row = from; row <= to; row += 1) found.add(row);
  }
  return [...found].sort((one, other) => one - other);
}

/** "12, 15-18" */
export function rowsText(rows: readonly number[], isAcross: boolean): string {
  const runs: [number, number][] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last?.[1] === row - 1) last[1] = row;
    else runs.push([row, row]);
  }
  return runs
    .map(([from, to]) =>
      from === to
        ? placeText(from, isAcross)
        : `${placeText(from, isAcross)}-${placeText(to, isAcross)}`,
    )
    .join(", ");
}

export function withLeft(mapping: LogbookMapping, rows: readonly number[]): LogbookMapping {
  if (rows.length > 0) return { ...mapping, left: rows };
  const { left = rows, ...others } = mapping;
  return left.length === 0 ? mapping : others;
}

/** The cells as if nothing stood in the rows that are left out. */
export function withoutLeft({ left = [] }: LogbookMapping, cells: SheetCells): SheetCells {
  if (left.length === 0) return cells;
  const out = new Set(left);
  const blanked = <T>(rows: readonly (readonly T[])[], nothing: T): (readonly T[])[] =>
    rows.map((row, at) => (out.has(cells.row + at) ? row.map(() => nothing) : row));
  return {
    ...cells,
    values: blanked(cells.values, ""),
    formulas: blanked(cells.formulas, ""),
  };
}
