/** What hangs on a file's cells, put into the cells of the grid: notes, links, threads, filters. */
import type { ICellData } from "@univerjs/core";
import { cellName } from "../../sheet/cell-name";
import type { Sheet } from "../../xlsx";

/** Those of the sheet's own cells and of its tables. */
const filtersOf = ({ filter, tables }: Sheet) =>
  [filter, ...tables.map((table) => table.filter)].flatMap((each) => each ?? []);

export function hangBeside(data: Record<number, Record<number, ICellData>>, sheet: Sheet): void {
  for (const { row, column, text } of sheet.notes) {
    const there = ((data[row] ??= {})[column] ??= {});
    there.custom = { note: text };
  }
  for (const { area, columns: asked } of filtersOf(sheet)) {
    for (const { column, criterion } of asked) {
      const there = ((data[area.row] ??= {})[column] ??= {});
      there.custom = { ...there.custom, filter: { area, criterion } };
    }
  }
  for (const { row, column, rows: down, columns: across } of sheet.attached) {
    if (down * across > 1) continue;
    const there = ((data[row] ??= {})[column] ??= {});
    there.custom = { ...there.custom, hanging: cellName(row, column) };
  }
}
