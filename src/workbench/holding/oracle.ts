/**
 * The file as the oracle: the first results of the grid beside those that the file holds. Figures are the
 * same when they agree to nine digits: programs differ in the last few of fifteen where a result is
 * summed or iterated, and a wrong formula or rule is never that near. Beside 0 the difference itself
 * counts: 0.3-0.2-0.1 is 0 in one program and 3E-17 in another.
 */
import type { CellValue } from "../../xlsx";
import type { GivenCell } from "../engine/cells";
import type { GridState, SheetState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";
import { sheetKey } from "../sheet-key";
import { keyAt } from "./cell-keys";
import type { Holding } from "./holding";
import type { HeldPlace } from "./marks";

const relative = 1e-9;
const besideNothing = 1e-14;

function agrees(file: CellValue, grid: GivenCell | undefined): boolean {
  if (typeof file === "number") {
    if (typeof grid !== "number") return false;
    const apart = Math.abs(file - grid);
    return apart <= besideNothing || apart <= relative * Math.max(Math.abs(file), Math.abs(grid));
  }
  if (typeof file === "object") {
    if (typeof grid !== "object" || grid === null) return false;
    return grid.basicValue === file.error || (file.error === "#VALUE!" && isNewer(grid.basicValue));
  }
  return file === (grid ?? "");
}

/** Files hold errors that are newer than the format as #VALUE!. */
const isNewer = (error: string): boolean => ["#SPILL!", "#CALC!"].includes(error);

/** The program that saved the file did not know a function: what it shows says nothing. */
const isUnknown = (value: CellValue | undefined): boolean =>
  typeof value === "object" && value.error === "#NAME?";

/** Formulas whose first result here is another than in the file. */
export function differing(file: OpenedFile, state: GridState, holding: Holding): HeldPlace[] {
  if (file.isUnsettled) return [];
  const shown = new Map(state.sheets.map((sheet) => [sheet.name, sheet]));
  const unknown = file.sheets.flatMap(({ name, cells }) =>
    cells
      .filter(({ formula, value }) => formula !== undefined && isUnknown(value))
      .map(({ row, column }) => ({ sheet: sheetKey(name), row, column })),
  );
  const isVoid = holding.reading(unknown);
  // another day, they come to something else
  const isByClock = holding.byTheClock();
  return file.sheets.flatMap((sheet): HeldPlace[] => {
    const now = shown.get(sheet.name);
    const key = sheetKey(sheet.name);
    if (!now) return [];
    const answers = new Map(
      sheet.cells
        .filter(({ spilledFrom }) => spilledFrom)
        .map((c) => [keyAt(c.row, c.column), c.value]),
    );
    return sheet.cells.flatMap((cell): HeldPlace[] => {
      const { row, column, formula, value, array } = cell;
      if (formula === undefined || value === undefined || isUnknown(value)) return [];
      if (holding.reasonAt(key, row, column) || isVoid(key, row, column)) return [];
      if (isByClock(key, row, column)) return [];
      const isSame = array
        ? arrayAgrees(array, now, (r, c) =>
            r === row && c === column ? value : answers.get(keyAt(r, c)),
          )
        : agrees(value, now.cells.get(row)?.get(column)?.value) &&
          !now.spills.get(row)?.has(column);
      return isSame ? [] : [{ sheet: key, key: keyAt(row, column), formula }];
    });
  });
}

function arrayAgrees(
  { row, column, rows, columns }: { row: number; column: number; rows: number; columns: number },
  now: SheetState,
  inFile: (row: number, column: number) => CellValue | undefined,
): boolean {
  const spill = now.spills.get(row)?.get(column);
  if ((spill?.rows ?? 1) !== rows || (spill?.columns ?? 1) !== columns) return false;
  const own = now.cells.get(row)?.get(column)?.value ?? null;
  const values = spill?.values ?? [[own]];
  return values.every((cells, down) =>
    cells.every((value, across) => {
      const expected = inFile(row + down, column + across);
      return expected === undefined ? value === null || value === "" : agrees(expected, value);
    }),
  );
}
