/** Cells as the embedded engine holds them, to and from cells as the catalogue reads and answers them. */
import { CellValueType, type Nullable } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseValueObject,
  type ErrorType,
  BooleanValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { CellValue } from "../../functions/answer";

type EngineCell = Nullable<BaseValueObject>;

/** An error cell as the spreadsheet program hands it to an add-in: the readers know this form. */
export interface ErrorCell {
  readonly type: "Error";
  readonly basicValue: string;
}

export type GivenCell = CellValue | ErrorCell | null;

/** A text that would be taken for something else when typed: a figure, a formula, an error, money, a text behind an apostrophe. */
const isMistakable = (text: string): boolean => /^\s*[=+\-.(#\d'$€£¥]|^(?:true|false)$/i.test(text);

/** What the grid is told a text is: one that it would not take for a text is shown behind an apostrophe. */
export const textType = (text: string): CellValueType =>
  isMistakable(text) ? CellValueType.FORCE_STRING : CellValueType.STRING;

export const errorCell = (code: string): ErrorCell => ({ type: "Error", basicValue: code });

const isErrorObject = (
  cell: BaseValueObject,
): cell is BaseValueObject & { getErrorType(): ErrorType } => cell.isError();

/** One cell. Nothing typed there is null, never 0. */
function cellIn(cell: EngineCell): GivenCell {
  if (!cell || cell.isNull()) return null;
  if (isErrorObject(cell)) return errorCell(cell.getErrorType());
  const value = cell.getValue();
  // The engine may hold a boolean as 1 or 0.
  return cell.isBoolean() ? value === true || value === 1 : value;
}

/**
 * One argument. A reference arrives as an array, a reference to one cell too: it stays `[[cell]]`, so
 * that an empty cell (given but empty) differs from an argument left out (null).
 */
export function argumentIn(given: BaseValueObject): GivenCell | GivenCell[][] {
  if (!given.isArray()) return cellIn(given);
  const array = given as ArrayValueObject;
  return Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (__, column) => cellIn(array.get(row, column))),
  );
}

/** One cell of an answer. */
export function cellOut(value: CellValue): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  return StringValueObject.create(value);
}
