/**
 * What is put into cells, mended on its way: an empty text that was typed is nothing, since formulas tell
 * the two apart; and a result brings no number format along to a cell that had a result before, since
 * nobody gave it one.
 */
import {
  CellValueType,
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

const isNothing = ({ v, t, f, si }: ICellData): boolean =>
  v === "" && !f && !si && t !== CellValueType.FORCE_STRING;

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
      if (isNothing(data)) data.v = null;
      return;
    }
    if (!("s" in data)) return;
    const before = sheet?.getCellRaw(row, column)?.v;
    if (before !== undefined && before !== null) delete data.s;
  });
}
