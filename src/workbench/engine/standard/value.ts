/** Values of cells as plain values, from the embedded engine's and back. */
import type { Nullable } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  type ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";

/** An error of a spreadsheet, thrown: a formula that meets one is that error. */
export class Fault extends Error {
  constructor(readonly sign: string) {
    // thousands are made while a sheet is worked out, and where each was made is asked by nobody
    const { stackTraceLimit } = Error;
    Error.stackTraceLimit = 0;
    super(sign);
    Error.stackTraceLimit = stackTraceLimit;
  }
}

/** One cell; null where nothing was typed. */
export type Cell = number | string | boolean | Fault | null;
export type Rows = readonly (readonly Cell[])[];

/** A block of cells, or a value that stands for itself. */
export interface Given {
  readonly rows: Rows;
  /** It stands in cells: text in it is no argument, it is left out. */
  readonly isRange: boolean;
  readonly isOne: boolean;
  readonly isOmitted: boolean;
}

const isErrorObject = (
  value: BaseValueObject,
): value is BaseValueObject & { getErrorType(): ErrorType } => value.isError();

function cellOf(value: Nullable<BaseValueObject>): Cell {
  if (!value || value.isNull()) return null;
  if (isErrorObject(value)) return new Fault(value.getErrorType());
  const held = value.getValue();
  return value.isBoolean() ? held === true || held === 1 : held;
}

const blocks = new WeakMap<ArrayValueObject, Given>();

export function givenOf(value: BaseValueObject): Given {
  if (!value.isArray()) {
    const cell = cellOf(value);
    return { rows: [[cell]], isRange: false, isOne: true, isOmitted: value.isNull() };
  }
  const array = value as ArrayValueObject;
  const known = blocks.get(array);
  if (known) return known;
  const rowCount = array.getRowCount();
  const columnCount = array.getColumnCount();
  const rows = Array.from({ length: rowCount }, (_, row) =>
    Array.from({ length: columnCount }, (__, column) => cellOf(array.get(row, column))),
  );
  const isRange = array.getCurrentRow() >= 0;
  const isOne = rowCount === 1 && columnCount === 1;
  const given: Given = { rows, isRange, isOne, isOmitted: false };
  // a block of the sheet is frozen, and handed to every formula that refers to it
  if (isRange) blocks.set(array, given);
  return given;
}

export function objectOf(cell: Cell): BaseValueObject {
  if (cell === null) return NullValueObject.create();
  if (cell instanceof Fault) return ErrorValueObject.create(cell.sign as ErrorType);
  if (typeof cell === "number") {
    if (!Number.isFinite(cell)) return objectOf(new Fault("#NUM!"));
    return NumberValueObject.create(cell === 0 ? 0 : cell);
  }
  return typeof cell === "boolean"
    ? BooleanValueObject.create(cell)
    : StringValueObject.create(cell);
}
