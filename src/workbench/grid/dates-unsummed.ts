/**
 * The line below the grid counts days among the selected cells and adds none of them up: a date is held
 * as a number, and the sum of two is nothing.
 */
import {
  CellValueType,
  type ICellData,
  type Injector,
  type Nullable,
  type Worksheet,
} from "@univerjs/core";
import { IStatusBarService, StatusBarController } from "@univerjs/preset-sheets-core";
import { showsDays } from "../file/dates";

/** How the line's own controller takes a cell. */
interface Takes {
  _getCellValue(row: number, column: number, sheet: Worksheet, more: unknown): Nullable<ICellData>;
}

export function leaveDatesOut(injector: Injector): void {
  const line = injector.get(StatusBarController) as unknown as Takes;
  const take = line._getCellValue.bind(line);
  line._getCellValue = (row, column, sheet, more) => {
    const cell = take(row, column, sheet, more);
    if (typeof cell?.v !== "number") return cell;
    const pattern = sheet.getComposedCellStyle(row, column).n?.pattern;
    // as a text it is counted, and no more
    return pattern && showsDays(pattern) ? { ...cell, t: CellValueType.STRING } : cell;
  };
  // sums are shown in the format of the cell one is in: not where that one is a date
  const service = injector.get(IStatusBarService);
  const set = service.setState.bind(service);
  service.setState = (state) =>
    set(state?.pattern && showsDays(state.pattern) ? { ...state, pattern: null } : state);
}
