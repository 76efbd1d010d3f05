/** A sort that was planned, done in the grid as one step to undo: whole cells go, with all that is theirs. */
import {
  type ICellData,
  ICommandService,
  type IMutationInfo,
  type Injector,
  IUndoRedoService,
  type Nullable,
  sequenceExecute,
  Tools,
} from "@univerjs/core";
import { ReorderRangeMutation, SetRangeValuesMutation } from "@univerjs/sheets";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { SortPlan } from "./plan-sort";

type Cells = Record<number, Record<number, ICellData>>;

/** All a cell holds, so that whoever listens to changes hears of it; its look has gone there already. */
function content(cell: Nullable<ICellData>, formula: string): ICellData {
  if (formula !== "")
    return { f: formula, si: null, v: cell?.v ?? null, t: cell?.t ?? null, p: null };
  if (cell?.p) return { f: null, si: null, p: Tools.deepClone(cell.p) };
  return { f: null, si: null, p: null, v: cell?.v ?? null, t: cell?.t ?? null };
}

type FormulaAt = (down: number, across: number) => string;

/** What moving rows tells the engine: first where each cell goes, then what it holds there. */
function mutations(
  cells: WorkbookCells,
  { block }: SortPlan,
  from: (down: number) => number,
  formulaAt: FormulaAt,
): IMutationInfo[] {
  const matrix = cells.names.sheet(block.sheet)?.getCellMatrix();
  const order: Record<number, number> = {};
  const cellValue: Cells = {};
  for (let down = 0; down < block.rows; down += 1) {
    order[block.row + down] = block.row + from(down);
    const row: Record<number, ICellData> = (cellValue[block.row + down] = {});
    for (let across = 0; across < block.columns; across += 1) {
      const cell = matrix?.getValue(block.row + from(down), block.column + across);
      row[block.column + across] = content(cell, formulaAt(down, across));
    }
  }
  const on = { unitId: cells.names.unit, subUnitId: cells.names.sheetId(block.sheet) };
  const range = {
    startRow: block.row,
    endRow: block.row + block.rows - 1,
    startColumn: block.column,
    endColumn: block.column + block.columns - 1,
  };
  return [
    { id: ReorderRangeMutation.id, params: { ...on, range, order } },
    { id: SetRangeValuesMutation.id, params: { ...on, cellValue } },
  ];
}

const isStill = (plan: SortPlan): boolean => plan.order.every((from, place) => from === place);

/** False where nothing had to move. */
export function doSort(injector: Injector, cells: WorkbookCells, plan: SortPlan): boolean {
  if (isStill(plan)) return false;
  const { block, order, formulas } = plan;
  const redo = mutations(
    cells,
    plan,
    (down) => order[down] ?? down,
    (down, across) => formulas[down]?.[across] ?? "",
  );
  const placeOf = new Map(order.map((from, place) => [from, place]));
  const before = Array.from({ length: block.rows }, (_, down) =>
    Array.from({ length: block.columns }, (__, across) =>
      cells.formula({ sheet: block.sheet, row: block.row + down, column: block.column + across }),
    ),
  );
  const [reorder, values] = mutations(
    cells,
    plan,
    (down) => down,
    (down, across) => before[down]?.[across] ?? "",
  ) as [IMutationInfo, IMutationInfo];
  const back: Record<number, number> = {};
  for (const [from, place] of placeOf) back[block.row + from] = block.row + place;
  const undo = [{ ...reorder, params: { ...reorder.params, order: back } }, values];
  const kept = Tools.deepClone(redo);
  const { result } = sequenceExecute(redo, injector.get(ICommandService));
  if (result) {
    injector.get(IUndoRedoService).pushUndoRedo({
      unitID: cells.names.unit,
      undoMutations: undo,
      redoMutations: kept,
    });
  }
  return result;
}
