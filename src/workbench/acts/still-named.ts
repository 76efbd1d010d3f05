/**
 * Rows of our own tables that others look up by a name, and that an act would delete: who names them still.
 * No formula of theirs is broken by it: they only find nothing any more.
 */
import {
  batchHeading,
  type Namer,
  type Naming,
  namings,
  ownDay,
} from "../../workbook/tables/named-by";
import { isOurTable } from "../../workbook/tables/ours";
import type { StructuralAct } from "../../xlsx";
import type { GivenCell } from "../engine/cells";
import type { GridState } from "../file/grid-state";

export interface StillNamed {
  /** As it stands where it would be deleted: K-12 */
  readonly name: string;
  readonly loses: Naming["loses"] | "row of Titrations";
  /** The table that names it, and the batch of each of its rows that does. */
  readonly by: readonly { readonly table: string; readonly batch: string }[];
}

interface Row {
  readonly under: (heading: string) => GivenCell;
  readonly goes: boolean;
}

const textOf = (value: GivenCell): string =>
  value === null || typeof value === "object" ? "" : String(value);

/** As the formulas compare, which take no notice of capitals. */
const isSame = (a: GivenCell, b: string): boolean => textOf(a).toLowerCase() === b.toLowerCase();

/** The rows of one of our tables; none where it is not there. */
function rowsOf({ sheets }: GridState, table: string, act: StructuralAct): readonly Row[] {
  for (const sheet of sheets) {
    const area = sheet.tables.find(({ name }) => name.toLowerCase() === table.toLowerCase());
    if (!area) continue;
    const at = (row: number, column: number): GivenCell =>
      sheet.cells.get(row)?.get(column)?.value ?? null;
    const headings = Array.from({ length: area.columns }, (_, column) =>
      textOf(at(area.row, area.column + column)),
    );
    if (!isOurTable({ name: area.name, headings })) return [];
    const goes = (row: number): boolean =>
      act.do === "delete-rows" &&
      act.sheet === sheet.name &&
      row >= act.first &&
      row < act.first + act.count;
    return Array.from({ length: area.rows - 1 }, (_, index): Row => {
      const row = area.row + 1 + index;
      const under = (heading: string): GivenCell => {
        const column = headings.indexOf(heading);
        return column < 0 ? null : at(row, area.column + column);
      };
      return { under, goes: goes(row) };
    });
  }
  return [];
}

/** What is of a later day than the batch is not looked up, as in the formula. */
function isInTime(named: Row, namer: Row, day: Namer["day"]): boolean {
  const made = named.under(ownDay);
  const until = day === undefined ? null : namer.under(day);
  return typeof made !== "number" || typeof until !== "number" || made < until + 1;
}

/** @param state what the grid holds before the act */
export function stillNamed(act: StructuralAct, state: GridState): readonly StillNamed[] {
  if (act.do !== "delete-rows") return [];
  return namings.flatMap(({ of, under, by, loses, madeOf }) => {
    const rows = rowsOf(state, of, act);
    const deleted = rows.filter(({ goes }) => goes);
    const names = new Map(
      // of several ways to write it, the first
      [...deleted].reverse().map((row) => {
        const name = textOf(row.under(under));
        return [name.toLowerCase(), name] as const;
      }),
    );
    names.delete("");
    return [...names.values()].reverse().flatMap((name) => {
      const isOf = (row: Row): boolean => isSame(row.under(under), name);
      const found = by.flatMap(({ table, under: places, day }) =>
        rowsOf(state, table, act)
          .filter(
            (namer) =>
              !namer.goes &&
              places.some((place) => isSame(namer.under(place), name)) &&
              deleted.some((row) => isOf(row) && isInTime(row, namer, day)) &&
              !rows.some((row) => !row.goes && isOf(row) && isInTime(row, namer, day)),
          )
          .map((namer) => ({ table, batch: textOf(namer.under(batchHeading)) })),
      );
      const isMade =
        madeOf?.some((heading) =>
          deleted.some((row) => isOf(row) && textOf(row.under(heading)) !== ""),
        ) ?? true;
      const lost = isMade ? loses : "row of Titrations";
      return found.length > 0 ? [{ name, loses: lost, by: found }] : [];
    });
  });
}
