/**
 * What is put into cells, mended on its way: an empty text that was typed is nothing, since formulas tell
 * the two apart; and a result brings no number format along to a cell that had a result before, since
 * nobody gave it one.
 */
import {
  type ICellData,
  type ICommandInfo,
  type IExecutionOptions,
  ObjectMatrix,
} from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { WorkbookCells } from "../engine/workbook-cells";

interface Put {
  unitId?: unknown;
  subUnitId?: unknown;
  cellValue?: Record<number, Record<number, ICellData | null>>;
}

/** A lone apostrophe too: a file would have no such cell. */
const isNothing = ({ v, f, si }: ICellData): boolean => v === "" && !f && !si;

/** The Delete key: what hangs on the cell, a note or words to choose from, is not what was typed in it. */
const isEmptying = ({ v, f, p, si, custom }: ICellData): boolean =>
  [v, f, p, si, custom].every((each) => each === null);

export function tidy(
  { id, params }: ICommandInfo,
  options: IExecutionOptions | undefined,
  cells: WorkbookCells,
): void {
  if (id !== SetRangeValuesMutation.id) return;
  const { subUnitId, cellValue } = (params ?? {}) as Put;
  if (!cellValue) return;
  const isResult = options?.applyFormulaCalculationResult === true;
  const sheet =
    typeof subUnitId === "string" ? cells.names.workbook.getSheetBySheetId(subUnitId) : undefined;
  new ObjectMatrix<ICellData | null>(cellValue).forValue((row, column, data) => {
    if (!data) return;
    if (!isResult) {
      if (isNothing(data)) Object.assign(data, { v: null, t: null });
      if (isEmptying(data)) delete data.custom;
      return;
    }
    if (!("s" in data)) return;
    const before = sheet?.getCellRaw(row, column)?.v;
    if (before !== undefined && before !== null) delete data.s;
  });
}
