/** What a sort will do, worked out before anything is done: which row comes where, and its formulas there. */
import type { Block, CellPlace } from "../../sheet/area";
import { cellName } from "../../sheet/cell-name";
import { isRefused, refused, type Refusal } from "../../sheet/refusal";
import type { WorkbookCells } from "../engine/workbook-cells";
import { sortBlock } from "./block";
import { isOneFormula, movedFormula } from "./moved-formula";
import { type Direction, sortedOrder } from "./order";
import { type SortTerms, whyRowsStay } from "./refusals";

export interface SortPlan {
  readonly block: Block;
  /** Of each row of the block the row that comes there, counted from the block's first. */
  readonly order: readonly number[];
  /** Formulas as they will stand, row by row; "" where there is none. */
  readonly formulas: readonly (readonly string[])[];
}

const indices = (count: number): number[] => Array.from({ length: count }, (_, index) => index);

/** Formulas of one column in the new order. */
function columnMoved(
  formulas: readonly string[],
  order: readonly number[],
  block: Block,
  column: number,
): readonly string[] | Refusal {
  const moved: string[] = [];
  for (const [place, from] of order.entries()) {
    const formula = formulas[from] ?? "";
    const journey = { sheet: block.sheet, from: block.row + from, to: block.row + place };
    const there = formula === "" ? "" : movedFormula(formula, journey);
    if (typeof there === "string") {
      moved.push(there);
      continue;
    }
    const placed = formulas.map((each, row) => ({ formula: each, row: block.row + row }));
    if (isOneFormula(placed, block.sheet)) return formulas;
    return refused(
      `The formula in ${cellName(block.row + from, block.column + column)} refers to ${there.sentence}, in another row, and would refer to a stranger once rows change places.`,
    );
  }
  return moved;
}

/** Rows without anything typed, beside others that have something, wait to be filled in. */
function waitingRows(cells: WorkbookCells, block: Block, formulas: readonly (readonly string[])[]) {
  const waits = indices(block.rows).map((row) =>
    indices(block.columns).every((column) => {
      if (formulas[column]?.[row] !== "") return true;
      const value = cells.value(placeIn(block, row, column));
      return value === null || value === "";
    }),
  );
  return waits.every(Boolean) ? waits.map(() => false) : waits;
}

const placeIn = ({ sheet, row, column }: Block, down: number, across: number): CellPlace => ({
  sheet,
  row: row + down,
  column: column + across,
});

export function planSort(
  terms: SortTerms,
  place: CellPlace,
  direction: Direction,
): SortPlan | Refusal {
  const { cells } = terms;
  const found = sortBlock(cells, place);
  if (isRefused(found)) return found;
  const block = found.rows;
  const stays = whyRowsStay(block, terms);
  if (stays !== undefined) return refused(stays);
  const formulas = indices(block.columns).map((column) =>
    indices(block.rows).map((row) => cells.formula(placeIn(block, row, column))),
  );
  const waiting = waitingRows(cells, block, formulas);
  const keys = indices(block.rows).map((row) => ({
    key: cells.value({ ...place, row: block.row + row }),
    isWaiting: waiting[row] ?? false,
  }));
  const order = sortedOrder(keys, direction);
  const columns: (readonly string[])[] = [];
  for (const [column, each] of formulas.entries()) {
    const moved = columnMoved(each, order, block, column);
    if (isRefused(moved)) return moved;
    columns.push(moved);
  }
  return {
    block,
    order,
    formulas: indices(block.rows).map((row) => columns.map((column) => column[row] ?? "")),
  };
}
