/**
 * A change that says nothing of what a cell holds, only of its look or of what stands beside it, leaves
 * its formula. The engine would forget the formula and keep its last result as if it had been typed.
 */
import {
  type ICellData,
  ICommandService,
  IUniverInstanceService,
  ObjectMatrix,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";

interface Changed {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue?: Record<number, Record<number, ICellData | null>>;
}

const tellsContent = (data: ICellData): boolean =>
  "v" in data || "f" in data || "p" in data || "si" in data;

/** Call before any plugin begins: what was asked first hears of a change first. */
export function keepFormulas(univer: Univer): void {
  const injector = univer.__getInjector();
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { unitId, subUnitId, cellValue } = params as Changed;
    const held = injector
      .get(IUniverInstanceService)
      .getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)
      ?.getSheetBySheetId(subUnitId)
      ?.getCellMatrix();
    if (!held || !cellValue) return;
    new ObjectMatrix<ICellData | null>(cellValue).forValue((row, column, data) => {
      if (!data || tellsContent(data)) return;
      const { f, si } = held.getValue(row, column) ?? {};
      const kept: ICellData = {
        ...data,
        ...(f === undefined || f === null ? {} : { f }),
        ...(si === undefined || si === null ? {} : { si }),
      };
      if ("f" in kept || "si" in kept) (cellValue[row] ?? {})[column] = kept;
    });
  });
}
