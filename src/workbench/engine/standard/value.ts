/** Values of cells as plain values, and what one kind becomes where another is wanted. */
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
import { doubt } from "./doubt";

/** An error of a spreadsheet, thrown: a formula that meets one is that error. */
export class Fault extends Error {
  constructor(readonly sign: string) {
    super(sign);
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

const plainFigure = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const day = /^(\d{4})-(\d{2})-(\d{2})$/;
const milliseconds = 86_400_000;

/** Days as spreadsheets count them, from 1899-12-30. */
export const serialOf = (year: number, month: number, date: number): number => {
  const found = new Date(0);
  found.setUTCFullYear(year, month - 1, date);
  return Math.round(found.getTime() / milliseconds) + 25_569;
};

function figureIn(text: string): number {
  const bare = text.trim();
  if (plainFigure.test(bare)) return Number(bare);
  const [, year, month, date] = day.exec(bare) ?? [];
  // programs agree on nothing else that might be a figure
  if (/\d/.test(bare) || /^(?:true|false)$/i.test(bare)) doubt();
  if (year === undefined) throw new Fault("#VALUE!");
  return serialOf(Number(year), Number(month), Number(date));
}

export function number(cell: Cell): number {
  if (typeof cell === "number") return cell;
  if (cell === null) return 0;
  if (typeof cell === "boolean") return cell ? 1 : 0;
  if (cell instanceof Fault) throw cell;
  return figureIn(cell);
}

/** Several figures. Which of two errors wins, programs do not agree on. */
export function numbers(cells: readonly Cell[]): number[] {
  const faults: Fault[] = [];
  const found = cells.map((cell) => {
    try {
      return number(cell);
    } catch (error) {
      if (!(error instanceof Fault)) throw error;
      faults.push(error);
      return 0;
    }
  });
  const [first] = faults;
  if (first && faults.some(({ sign }) => sign !== first.sign)) doubt();
  if (first) throw first;
  return found;
}

/** Where programs write an exponent, and with which digits, they do not agree. */
const isUsual = (figure: number): boolean =>
  figure === 0 || (Math.abs(figure) >= 1e-4 && Math.abs(figure) < 1e15);

export function shownFigure(figure: number): string {
  if (!isUsual(figure)) doubt();
  const short = Number(figure.toPrecision(15));
  if (short === 0) return "0";
  return String(short);
}

export function text(cell: Cell): string {
  if (typeof cell === "string") return cell;
  if (cell === null) return "";
  if (cell instanceof Fault) throw cell;
  if (typeof cell === "number") return shownFigure(cell);
  doubt();
  return cell ? "TRUE" : "FALSE";
}

export function truth(cell: Cell): boolean {
  if (typeof cell === "boolean") return cell;
  if (typeof cell === "string") {
    if (/\d/.test(cell) || /^\s*(?:true|false)\s*$/i.test(cell)) doubt();
    throw new Fault("#VALUE!");
  }
  return number(cell) !== 0;
}

/** To 15 digits, which is what a person sees of it. */
export const seen = (figure: number): number => Number(figure.toPrecision(15));

const near = 2 ** -48;

/** So close that the difference is what doubles make of decimals. */
export function isClose(a: number, b: number): boolean {
  if (a === b) return true;
  const apart = Math.abs(a - b);
  if (a === 0 || b === 0 || !Number.isFinite(apart)) return false;
  if (Number.isSafeInteger(a) && Number.isSafeInteger(b)) return false;
  return apart < Math.abs(a) * near && apart < Math.abs(b) * near;
}

const collator = new Intl.Collator("en", { sensitivity: "accent" });
const letters = /^[\p{L}\p{N} ]*$/u;

function compareTexts(a: string, b: string): number {
  const order = collator.compare(a, b);
  if (a.toLowerCase() === b.toLowerCase()) return 0;
  // equal or not they agree on; on the order of marks they do not
  if (!letters.test(a) || !letters.test(b)) doubtOrder();
  return order === 0 ? -1 : order;
}

let isOrderAsked = false;
const doubtOrder = (): void => {
  if (isOrderAsked) doubt();
};

const emptyLike = (cell: Cell): Cell => {
  if (typeof cell === "string") return "";
  return typeof cell === "boolean" ? false : 0;
};

/** Below 0, 0, above 0. Figures come before texts. */
export function compare(left: Cell, right: Cell, order = true): number {
  const a = left ?? emptyLike(right);
  const b = right ?? emptyLike(left);
  if (a instanceof Fault) throw a;
  if (b instanceof Fault) throw b;
  isOrderAsked = order;
  if (typeof a === "string" && typeof b === "string") return compareTexts(a, b);
  if (typeof a !== typeof b && (typeof a === "boolean" || typeof b === "boolean")) doubt();
  if (typeof a === "string") return 1;
  if (typeof b === "string") return -1;
  const [x, y] = [Number(a), Number(b)];
  return isClose(x, y) ? 0 : x - y;
}
