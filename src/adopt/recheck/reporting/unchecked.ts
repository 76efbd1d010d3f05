/** Rows that were not checked, gathered by reason. */
import { andList } from "../../../sheet/and-list";
import { placeText } from "../../recognising/by-hand/left-out";
import type { Unchecked } from "./finding";

export class UncheckedRows {
  private readonly byKey = new Map<string, { sheet: string; why: string; rows: number[] }>();

  add(sheet: string, row: number, why: string): void {
    const key = `${sheet}\n${why}`;
    const known = this.byKey.get(key);
    if (!known) this.byKey.set(key, { sheet, why, rows: [row] });
    else if (known.rows[known.rows.length - 1] !== row) known.rows.push(row);
  }

  found(): Unchecked[] {
    return [...this.byKey.values()];
  }
}

const mostShown = 6;

/** "row 4", "rows 4, 7 to 9 and 12", as they are counted on the sheet; "column D" where lots stand across. */
export function rowsInWords(rows: readonly number[], isAcross = false): string {
  const runs: [number, number][] = [];
  for (const row of [...rows].sort((a, b) => a - b)) {
    const last = runs[runs.length - 1];
    if (last && row <= last[1] + 1) last[1] = row;
    else runs.push([row, row]);
  }
  const words = runs.map(([from, to]) =>
    from === to
      ? placeText(from, isAcross)
      : `${placeText(from, isAcross)} to ${placeText(to, isAcross)}`,
  );
  const shown = words.length > mostShown ? [...words.slice(0, mostShown), "more"] : words;
  const one = isAcross ? "column" : "row";
  return `${one}${rows.length === 1 ? "" : "s"} ${andList(shown)}`;
}

/** "T2 holds "2.90 bad", which is no figure (row 4)." */
export const uncheckedWords = ({ why, rows, isAcross, doubt }: Unchecked): string =>
  doubt ?? `Not checked: ${why} (${rowsInWords(rows, isAcross)}).`;
