/**
 * What the cells of an open workbook hold: raw values, never the displayed text, and the values of
 * spilled cells too, which the engine keeps apart from the sheet. The same in the page and headless.
 */
import {
  CellValueType,
  type ICellData,
  type Injector,
  type IRange,
  type Nullable,
  ObjectMatrix,
} from "@univerjs/core";
import { ERROR_TYPE_SET, type ErrorType, FormulaDataModel } from "@univerjs/engine-formula";
import { errorCell, type GivenCell } from "./cells";
import { evaluate } from "./evaluate";
import type { CellPlace } from "../../sheet/area";
import { type Area, WorkbookNames } from "./workbook-names";

/** Text of several lines, or partly bold, is held as a small document. */
function documentText(cell: Nullable<ICellData>): GivenCell {
  const stream = cell?.p?.body?.dataStream;
  return stream === undefined ? null : stream.replace(/\r?\n?$/, "").replace(/\r/g, "\n");
}

/** What the cell itself holds, nothing spilled. */
export function raw(cell: Nullable<ICellData>): GivenCell {
  const value = cell ? cell.v : null;
  if (value === null || value === undefined) return documentText(cell);
  // a text somebody typed may look like an error
  if (cell?.t === CellValueType.FORCE_STRING) return String(value);
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
  readonly names: WorkbookNames;
  private readonly model: FormulaDataModel;

  constructor(private readonly injector: Injector) {
    this.names = new WorkbookNames(injector);
    this.model = injector.get(FormulaDataModel);
  }

  private stored({ sheet, row, column }: CellPlace): Nullable<ICellData> {
    return this.names.sheet(sheet)?.getCellMatrix().getValue(row, column);
  }

  /** The raw value of a cell; null when it is empty. */
  value(place: CellPlace): GivenCell {
    const stored = raw(this.stored(place));
    // an empty text is what the grid leaves where an answer was kept from spilling
    if (stored !== null && stored !== "") return stored;
    const spilled = this.model.getArrayFormulaCellData()[this.names.unit];
    return raw(spilled?.[this.names.sheetId(place.sheet)]?.[place.row]?.[place.column]) ?? stored;
  }

  /** The formula of a cell, with its equals sign; "" when it has none. */
  formula({ sheet, row, column }: CellPlace): string {
    const { unit } = this.names;
    return this.model.getFormulaStringByCell(row, column, this.names.sheetId(sheet), unit) ?? "";
  }

  /** The cell whose spilled answer covers this one; for that cell itself, itself. */
  spilledFrom({ sheet, row, column }: CellPlace): CellPlace | undefined {
    const ranges = this.model.getArrayFormulaRange()[this.names.unit]?.[this.names.sheetId(sheet)];
    let found: CellPlace | undefined;
    new ObjectMatrix<IRange>(ranges ?? {}).forValue((anchorRow, anchorColumn, range) => {
      if (!covers(range, row, column)) return true;
      found = { sheet, row: anchorRow, column: anchorColumn };
      return false;
    });
    return found;
  }

  /** The blocks that formulas of a sheet answer over, each more than one cell. */
  spills(sheet: string): Area[] {
    const ranges = this.model.getArrayFormulaRange()[this.names.unit]?.[this.names.sheetId(sheet)];
    const found: Area[] = [];
    new ObjectMatrix<IRange>(ranges ?? {}).forValue((top, left, { endRow, endColumn }) => {
      if (endRow > top || endColumn > left) {
        found.push({ sheet, top, left, bottom: endRow, right: endColumn });
      }
    });
    return found;
  }

  /** The number format of a cell; undefined when it has none. */
  format(place: CellPlace): string | undefined {
    const styles = this.names.workbook.getStyles();
    return styles.getStyleByCell(this.stored(place))?.n?.pattern;
  }

  /** What was written beside a cell when its book was made. */
  note(place: CellPlace): string {
    const cell = this.stored(place);
    const note: unknown = cell ? cell.custom?.note : undefined;
    return typeof note === "string" ? note : "";
  }

  /**
   * The raw values a reference or any expression stands for, row by row, as seen from the cell whose
   * formula holds it: what a function there is given. Undefined when it cannot be said now.
   */
  lookup(written: string, from: CellPlace): GivenCell[][] | undefined {
    return evaluate(this.injector, this.names, written, from);
  }
}
