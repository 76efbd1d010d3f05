/**
 * Formulas that go by the clock are worked out afresh where a file is opened, and show what they come to
 * today. The file has what they came to another day: that is what they are compared with when it is
 * saved, so that the file then says what is shown.
 */
import type { CellState, GridState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";
import { sheetKey } from "../sheet-key";
import type { Cell, CellValue } from "../../xlsx";
import { keyAt } from "./cell-keys";
import type { IsHeld } from "./held-terms";

export const asInGrid = (value: CellValue | undefined): CellState["value"] => {
  if (value === undefined || value === "") return null;
  return typeof value === "object" ? { type: "Error", basicValue: value.error } : value;
};

/** The program writes single calls of an add-in as arrays of one cell. */
const isOfMany = ({ array }: Cell): boolean =>
  array !== undefined && array.rows * array.columns > 1;

/** @param isByClock tells of a cell whether it goes by the clock, and is not held */
export function withFilesDay(
  state: GridState,
  file: Pick<OpenedFile, "sheets" | "isUnsettled">,
  isByClock: IsHeld,
): GridState {
  if (file.isUnsettled) return state;
  const inFile = new Map(
    file.sheets.map(({ name, cells }) => [
      name,
      new Map(cells.map((cell) => [keyAt(cell.row, cell.column), cell])),
    ]),
  );
  return {
    ...state,
    sheets: state.sheets.map((sheet) => {
      const key = sheetKey(sheet.name);
      const cellOf = (row: number, column: number, cell: CellState): CellState => {
        const there = inFile.get(sheet.name)?.get(keyAt(row, column));
        if (!there?.formula || isOfMany(there) || !isByClock(key, row, column)) return cell;
        return { ...cell, value: asInGrid(there.value), isOfAnotherDay: true };
      };
      return {
        ...sheet,
        cells: new Map(
          [...sheet.cells].map(([row, cells]) => [
            row,
            new Map([...cells].map(([column, cell]) => [column, cellOf(row, column, cell)])),
          ]),
        ),
      };
    }),
  };
}
