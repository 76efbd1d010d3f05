/**
 * References to cells. The engine keeps one object for all formulas that refer to a block, and one of its
 * functions makes the block larger: here each is told its edges anew. It takes a figure formatted as text for
 * text, text that looks like an error for one and an empty text for no text, and knows no cell beyond
 * the last row of the sheet.
 */
import { CellValueType, type ICellData, type IRange } from "@univerjs/core";
import {
  BaseReferenceObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";

interface Reference {
  _rangeData: IRange;
}

/** The engine takes it for an empty cell unless a formula is there. */
const isEmptyText = ({ v, t, f }: ICellData): boolean =>
  v === "" && (t === CellValueType.STRING || t === CellValueType.FORCE_STRING) && !f;

let isDone = false;

/** Once for the page: these belong to the engine's module, not to one engine. */
export function protectReferences(): void {
  if (isDone) return;
  isDone = true;
  const kind = BaseReferenceObject.prototype;

  const cellValue = kind.getCellValueObject;
  kind.getRangeData = function (this: BaseReferenceObject): IRange {
    return { ...(this as unknown as Reference)._rangeData };
  };
  kind.isExceedRange = function (this: BaseReferenceObject): boolean {
    const { startRow, startColumn } = this.getRangePosition();
    return startRow < 0 || startColumn < 0;
  };

  const cellData = kind.getCellData;
  kind.getCellData = function (this: BaseReferenceObject, row: number, column: number) {
    const cell = cellData.call(this, row, column);
    return cell && isEmptyText(cell) ? { ...cell, f: "=" } : cell;
  };
  kind.getCellValueObject = function (this: BaseReferenceObject, cell: ICellData) {
    const found = cellValue.call(this, cell);
    if (cell.t === CellValueType.FORCE_STRING) return StringValueObject.create(String(cell.v));
    const isFigure = cell.t === CellValueType.NUMBER && found.isString();
    return isFigure ? NumberValueObject.create(Number(cell.v)) : found;
  };
}
