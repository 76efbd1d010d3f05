/**
 * What was known of the workbook before an act, of the cells where they are after it. The results in the
 * file are those of before the act: with them the grid is compared when it is saved, so that the file is
 * then told of each that came to something else. And what was held stays held.
 */
import type { CellState, GridState, SheetState } from "../file/grid-state";
import type { SpillState } from "../file/spill-state";
import { keyOf, type OpenedFile } from "../file/opened-file";
import { keyAt } from "../holding/cell-keys";
import type { IsHeld } from "../holding/held-terms";
import type { HeldPlace } from "../holding/marks";
import { asInGrid } from "../holding/afresh";
import { sheetKey } from "../sheet-key";
import type { StructuralAct } from "../../xlsx";
import { cameFrom, sheetBefore } from "./came-from";

type Rows<T> = ReadonlyMap<number, ReadonlyMap<number, T>>;

function eachOf<T, U>(
  rows: Rows<T>,
  of: (row: number, column: number, each: T) => U | undefined,
): Map<number, Map<number, U>> {
  return new Map(
    [...rows].map(([row, cells]) => [
      row,
      new Map(
        [...cells].flatMap(([column, each]) => {
          const found = of(row, column, each);
          return found === undefined ? [] : [[column, found] as const];
        }),
      ),
    ]),
  );
}

/** @param shown what the grid holds after the act, worked out */
export function carriedState(
  act: StructuralAct,
  before: GridState,
  shown: GridState,
  opened: Pick<OpenedFile, "sheets">,
): GridState {
  const there = new Map(before.sheets.map((sheet) => [sheet.name, sheet]));
  const inFile = new Map(opened.sheets.map((sheet) => [sheet.name, sheet]));
  return {
    ...shown,
    sheets: shown.sheets.map((sheet): SheetState => {
      const was = there.get(sheetBefore(act, sheet.name));
      const values = new Map(
        inFile.get(sheet.name)?.cells.map((cell) => [keyOf(cell.row, cell.column), cell.value]),
      );
      const from = (row: number, column: number) =>
        cameFrom(act, { sheet: sheet.name, row, column });
      const cells = eachOf(sheet.cells, (row, column, cell): CellState => {
        if (cell.formula === "") return cell;
        const place = from(row, column);
        const old = place && was?.cells.get(place.row)?.get(place.column);
        if (!old || old.formula === "") {
          return { ...cell, value: asInGrid(values.get(keyOf(row, column))) };
        }
        const { isOfAnotherDay } = old;
        return { ...cell, value: old.value, ...(isOfAnotherDay ? { isOfAnotherDay } : {}) };
      });
      const spills = eachOf(sheet.cells, (row, column): SpillState | undefined => {
        const place = from(row, column);
        return place && was?.spills.get(place.row)?.get(place.column);
      });
      return { ...sheet, cells, spills };
    }),
  };
}

/** What was held, in the file after the act. */
export interface CarriedHolds {
  readonly marks: readonly HeldPlace[];
  readonly isHeld: IsHeld;
}

/**
 * @param wasHeld of a cell before the act
 * @param wasMarked its result was another than the file's
 */
export function carriedHolds(
  act: StructuralAct,
  opened: Pick<OpenedFile, "sheets">,
  wasHeld: IsHeld,
  wasMarked: IsHeld,
): CarriedHolds {
  const marks: HeldPlace[] = [];
  const held = new Set<string>();
  for (const { name, cells } of opened.sheets) {
    const sheet = sheetKey(name);
    for (const { row, column, formula } of cells) {
      if (formula === undefined) continue;
      const from = cameFrom(act, { sheet: name, row, column });
      if (!from) continue;
      const at = [sheetKey(from.sheet), from.row, from.column] as const;
      const key = keyAt(row, column);
      if (wasHeld(...at)) held.add(`${sheet}\n${String(key)}`);
      if (wasMarked(...at)) marks.push({ sheet, key, formula });
    }
  }
  return {
    marks,
    isHeld: (sheet, row, column) => held.has(`${sheet}\n${String(keyAt(row, column))}`),
  };
}
