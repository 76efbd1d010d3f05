/** The tables of the grid, as it has them now. */
import type { Injector } from "@univerjs/core";
import { TableManager } from "@univerjs/sheets-table";
import type { Area } from "../../sheet/area";

export interface TableState extends Area {
  readonly name: string;
}

export function tablesOn(injector: Injector, unit: string, sheet: string): TableState[] {
  return injector
    .get(TableManager)
    .getTableList(unit)
    .filter(({ subUnitId }) => subUnitId === sheet)
    .map(({ name, range }) => ({
      name,
      row: range.startRow,
      column: range.startColumn,
      rows: range.endRow - range.startRow + 1,
      columns: range.endColumn - range.startColumn + 1,
    }));
}
