/** What the grid holds, but for what it does not work out: that the file need not say. */
import type { CellState, GridState } from "../file/grid-state";

/** What a held formula shows need not be what the file says: once it is worked out, it is written. */
const notInFile: CellState["value"] = { type: "Error", basicValue: "not in the file" };

export function withoutHeld(state: GridState): GridState {
  const cellOf = (cell: CellState): CellState =>
    cell.formula !== "" && (cell.isHeld || cell.isDoubtful || state.isStopped)
      ? { ...cell, value: notInFile }
      : cell;
  return {
    ...state,
    sheets: state.sheets.map((sheet) => ({
      ...sheet,
      cells: new Map(
        [...sheet.cells].map(([row, cells]) => [
          row,
          new Map([...cells].map(([column, cell]) => [column, cellOf(cell)])),
        ]),
      ),
    })),
  };
}
