/**
 * What the cells of an open workbook hold: raw values, never the displayed text, and the values of
 * spilled cells too, which the engine keeps apart from the sheet. The same in the page and headless.
 */
import {
  CellValueType,
  type ICellData,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  ObjectMatrix,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { ERROR_TYPE_SET, type ErrorType, FormulaDataModel } from "@univerjs/engine-formula";
import { errorCell, type GivenCell } from "./cells";

/** Counted from 0, as the engine does. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

function raw(cell: Nullable<ICellData>): GivenCell {
  const value = cell ? cell.v : null;
  if (value === null || value === undefined) return null;
  if (ERROR_TYPE_SET.has(value as ErrorType)) return errorCell(String(value));
  if (cell && cell.t === CellValueType.BOOLEAN) return value === true || value === 1;
  return value;
}

const covers = (range: IRange, row: number, column: number): boolean =>
  range.startRow <= row &&
  row <= range.endRow &&
  range.startColumn <= column &&
  column <= range.endColumn;

export class WorkbookCells {
  private readonly model: FormulaDataModel;

  constructor(private readonly injector: Injector) {
    this.model = injector.get(FormulaDataModel);
  }

  get workbook(): Workbook {
    const workbook = this.injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    if (!workbook) throw new Error("No workbook is open.");
    return workbook;
  }

  sheet(name: string): Worksheet | undefined {
    return this.workbook.getSheetBySheetName(name) ?? undefined;
  }

  /** The raw value of a cell; null when it is empty. */
  value({ sheet, row, column }: CellPlace): GivenCell {
    const worksheet = this.sheet(sheet);
    if (!worksheet) return null;
    const stored = raw(worksheet.getCellMatrix().getValue(row, column));
    if (stored !== null) return stored;
    const spilled = this.model.getArrayFormulaCellData();
    return raw(spilled[this.workbook.getUnitId()]?.[worksheet.getSheetId()]?.[row]?.[column]);
  }

  /** The formula of a cell, with its equals sign; "" when it has none. */
  formula({ sheet, row, column }: CellPlace): string {
    const id = this.sheet(sheet)?.getSheetId();
    if (id === undefined) return "";
    return this.model.getFormulaStringByCell(row, column, id, this.workbook.getUnitId()) ?? "";
  }

  /** The cell whose spilled answer covers this one; for that cell itself, itself. */
  spilledFrom({ sheet, row, column }: CellPlace): CellPlace | undefined {
    const id = this.sheet(sheet)?.getSheetId() ?? "";
    const ranges = this.model.getArrayFormulaRange()[this.workbook.getUnitId()]?.[id];
    let found: CellPlace | undefined;
    new ObjectMatrix<IRange>(ranges ?? {}).forValue((anchorRow, anchorColumn, range) => {
      if (!covers(range, row, column)) return true;
      found = { sheet, row: anchorRow, column: anchorColumn };
      return false;
    });
    return found;
  }
}
