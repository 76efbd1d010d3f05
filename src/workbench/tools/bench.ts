/** What the tools of the button Sheet work on. */
import type { Area, CellPlace } from "../../sheet/area";
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { Grid } from "../grid/mount";
import type { Page } from "../page";

export interface Bench {
  readonly page: Page;
  readonly grid: Grid;
  /** Says what was done. */
  say(sentence: string): void;
  /** Says it of an act that Undo takes back, until it is. @param undone said then */
  sayOfAct(sentence: string, undone: string): void;
  /** Says why nothing was. */
  refuse(sentence: string): void;
}

export interface Selected {
  /** The cell one is in. */
  readonly cell: CellPlace;
  readonly areas: readonly Area[];
}

/** What is selected on the sheet that is shown; undefined where nothing is. */
export function selected({ grid }: Bench): Selected | undefined {
  const all = grid.injector.get(SheetsSelectionsService).getCurrentSelections();
  const primary = all.at(-1)?.primary;
  if (!primary) return undefined;
  const shown = grid.cells.names.workbook.getActiveSheet();
  const rows = shown.getRowCount();
  const columns = shown.getColumnCount();
  // of whole rows and columns the ends are not numbers
  const end = (last: number, count: number) =>
    Math.min(Number.isNaN(last) ? count : last, count - 1);
  const start = (first: number) => (Number.isNaN(first) ? 0 : first);
  return {
    cell: { sheet: shown.getName(), row: primary.actualRow, column: primary.actualColumn },
    areas: all.map(({ range: { startRow, startColumn, endRow, endColumn } }) => ({
      row: start(startRow),
      column: start(startColumn),
      rows: end(endRow, rows) - start(startRow) + 1,
      columns: end(endColumn, columns) - start(startColumn) + 1,
    })),
  };
}
