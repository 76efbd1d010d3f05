/** A column's filter set, or all of a block taken away: one step to undo. */
import {
  ICommandService,
  type ICellData,
  type IMutationInfo,
  type Injector,
  IUndoRedoService,
  sequenceExecute,
  Tools,
} from "@univerjs/core";
import {
  SetRangeValuesMutation,
  SetRowHiddenMutation,
  SetRowVisibleMutation,
} from "@univerjs/sheets";
import type { Block } from "../../sheet/area";
import { isRefused, refused, type Refusal } from "../../sheet/refusal";
import type { Criterion } from "../../xlsx";
import { shownValue } from "../engine/formatted";
import type { WorkbookCells } from "../engine/workbook-cells";
import { type CellFilter, filtersIn } from "../file/filter-state";
import { sortBlock } from "../sorting/block";
import { lets } from "./matches";

/** Rows a filter is of, under their headings; refused where there are none, or where figures would go by it. */
export function filterBlock(
  cells: WorkbookCells,
  place: { sheet: string; row: number; column: number },
): Block | Refusal {
  const table = cells.names
    .tables(place.sheet)
    .find(
      ({ top, left, right }) => top === place.row && left <= place.column && place.column <= right,
    );
  // from the heading too
  const found = sortBlock(cells, table ? { ...place, row: place.row + 1 } : place);
  if (isRefused(found)) return refused(found.sentence.replace("Sorting goes", "Filters go"));
  for (const sheet of cells.names.sheets) {
    const extent = cells.names.extent(sheet);
    for (let row = 0; extent && row <= extent.bottom; row += 1) {
      for (let column = 0; column <= extent.right; column += 1) {
        if (!/\b(?:SUBTOTAL|AGGREGATE)\s*\(/i.test(cells.formula({ sheet, row, column }))) continue;
        return refused(
          "A formula of this workbook (SUBTOTAL or AGGREGATE) goes by the rows that show: filter it in your spreadsheet program.",
        );
      }
    }
  }
  return found.rows;
}

const runs = (rows: readonly number[]): { startRow: number; endRow: number }[] => {
  const found: { startRow: number; endRow: number }[] = [];
  for (const row of rows) {
    const last = found.at(-1);
    if (last?.endRow === row - 1) last.endRow = row;
    else found.push({ startRow: row, endRow: row });
  }
  return found;
};

export const shownIn = (
  cells: WorkbookCells,
  place: { sheet: string; row: number; column: number },
) => shownValue(cells.value(place), cells.format(place));

/** @param criterion of the column; undefined takes away the filters of all columns of the block */
export function doFilter(
  injector: Injector,
  cells: WorkbookCells,
  block: Block,
  column: number,
  criterion: Criterion | undefined,
): number {
  const { sheet } = block;
  const held = cells.names.sheet(sheet);
  if (!held) return 0;
  const heading = block.row - 1;
  const area = { row: heading, column: block.column, rows: block.rows + 1, columns: block.columns };
  const isIn = (at: number) => at >= block.column && at < block.column + block.columns;
  const there = filtersIn(held).filter((each) => each.row === heading && isIn(each.column));
  const wanted = new Map<number, CellFilter>(
    criterion ? there.map((each) => [each.column, { area, criterion: each.criterion }]) : [],
  );
  if (criterion) wanted.set(column, { area, criterion });
  const rows = Array.from({ length: block.rows }, (_, down) => block.row + down);
  const before = rows.filter((row) => !held.getRowVisible(row));
  const after = rows.filter((row) =>
    [...wanted].some(([at, filter]) => {
      const place = { sheet, row, column: at };
      return !lets(filter.criterion, cells.value(place), shownIn(cells, place));
    }),
  );
  const on = { unitId: cells.names.unit, subUnitId: held.getSheetId() };
  const touched = new Set([...wanted.keys(), ...there.map((each) => each.column)]);
  const headings = (filterAt: (at: number) => CellFilter | undefined): IMutationInfo => {
    const row: Record<number, ICellData> = {};
    for (const at of touched) {
      const custom: Record<string, unknown> = { ...held.getCellRaw(heading, at)?.custom };
      delete custom.filter;
      const filter = filterAt(at);
      row[at] = { custom: filter ? { ...custom, filter } : custom };
    }
    return { id: SetRangeValuesMutation.id, params: { ...on, cellValue: { [heading]: row } } };
  };
  const rowsShown = (hidden: readonly number[]): IMutationInfo[] => {
    const ranges = (of: readonly number[]) =>
      runs(of).map((run) => ({ ...run, startColumn: 0, endColumn: held.getColumnCount() - 1 }));
    const shown = rows.filter((row) => !hidden.includes(row));
    return [
      { id: SetRowVisibleMutation.id, params: { ...on, ranges: ranges(shown) } },
      { id: SetRowHiddenMutation.id, params: { ...on, ranges: ranges(hidden) } },
    ];
  };
  const was = new Map(
    there.map(({ column: at, ...each }) => [at, { area: each.area, criterion: each.criterion }]),
  );
  const undo = [headings((at) => was.get(at)), ...rowsShown(before)];
  const redo = [headings((at) => wanted.get(at)), ...rowsShown(after)];
  const kept = Tools.deepClone(redo);
  if (!sequenceExecute(redo, injector.get(ICommandService)).result) return 0;
  injector.get(IUndoRedoService).pushUndoRedo({
    unitID: cells.names.unit,
    undoMutations: undo,
    redoMutations: kept,
  });
  return rows.length - after.length;
}
