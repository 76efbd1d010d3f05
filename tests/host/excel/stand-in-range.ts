/** Ranges of the stand-in. */
import { resultsOf } from "../memory/answers";
import {
  cellAt,
  cellToChange,
  type MemoryBook,
  type MemoryCell,
  type MemorySheet,
  sheetNamed,
} from "../memory/book";
import type { Block, CellContent } from "../../../src/sheet/port";
import { calculation } from "../calculation";
import { type Conversation, ProgramError, remote } from "./remote";
import { typeInto } from "./typed";

/** The workbook that a conversation is about, and what is selected in it. */
export interface Model {
  book: MemoryBook;
  selection: Block;
  /** The newest ExcelApi it has, behind its 1 and the point. */
  newest: number;
  /** A sheet was deleted, which nothing takes back. */
  isUndoLost: boolean;
  /** How many requests were answered. */
  syncs: number;
  /** Cells that show #BUSY! until so many requests were answered: functions of an add-in answer late. */
  readonly late: Map<MemoryCell, number>;
}

/** Whoever writes a formula and reads it at once sees it busy: the answer to the next reading has it. */
const lateBy = 2;

export interface Talk {
  readonly model: Model;
  readonly talk: Conversation;
}

/** Where a range is, found out when it is needed: a sheet may be added a moment before. */
type Where = () => Block;

/** For calls that take a range. */
const wheres = new WeakMap<object, Where>();

export const blockOf = (range: object): Block => {
  const where = wheres.get(range);
  if (!where) throw new ProgramError("InvalidArgument");
  return where();
};

export function sheetToChange({ book }: Model, name: string): MemorySheet {
  const sheet = sheetNamed(book, name);
  if (!sheet) throw new ProgramError("ItemNotFound");
  if (sheet.isProtected) throw new ProgramError("AccessDenied");
  return sheet;
}

const grid = <T>({ row, column, rows, columns }: Block, at: (r: number, c: number) => T): T[][] =>
  Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (__, c) => at(row + r, column + c)),
  );

function rangeReads({ model }: Talk, where: Where): Record<string, () => unknown> {
  const sheet = (): MemorySheet => {
    const found = sheetNamed(model.book, where().sheet);
    if (!found) throw new ProgramError("ItemNotFound");
    return found;
  };
  const cell = (row: number, column: number): MemoryCell => cellAt(sheet(), row, column);
  const contents = (): CellContent[][] => {
    const results = resultsOf(model.book, calculation);
    const at = { ...where(), sheet: sheet().name };
    return grid(at, (row, column) =>
      (model.late.get(cell(row, column)) ?? 0) >= model.syncs
        ? { error: "#BUSY!" }
        : results.valueAt({ sheet: at.sheet, row, column }),
    );
  };
  const plain = (content: CellContent) => (typeof content === "object" ? content.error : content);
  const type = (content: CellContent): string =>
    typeof content === "object" ? "Error" : content === "" ? "Empty" : "Other";
  return {
    rowIndex: () => where().row,
    columnIndex: () => where().column,
    rowCount: () => where().rows,
    columnCount: () => where().columns,
    values: () => contents().map((row) => row.map(plain)),
    valueTypes: () => contents().map((row) => row.map(type)),
    formulas: () => {
      const found = contents();
      const { row, column } = where();
      return grid(
        where(),
        (r, c) => cell(r, c).formula || plain(found[r - row]?.[c - column] ?? ""),
      );
    },
    numberFormat: () => grid(where(), (r, c) => cell(r, c).format),
  };
}

export function rangeAt(on: Talk, where: Where, isNull?: () => boolean): object {
  const { talk, model } = on;
  const first = (): MemoryCell => {
    const { sheet, row, column } = where();
    return cellToChange(sheetToChange(model, sheet), row, column);
  };
  const ignore = (): void => void first();
  /** What is set must be as large as the range. */
  const each = <T>(given: T[][], put: (cell: MemoryCell, one: T) => void): void => {
    const { sheet, row, column, rows, columns } = where();
    const holder = sheetToChange(model, sheet);
    if (given.length !== rows || given.some((line) => line.length !== columns)) {
      throw new ProgramError("InvalidArgument");
    }
    for (const [r, line] of given.entries()) {
      for (const [c, one] of line.entries()) {
        // null leaves a cell as it is
        if (one !== null) put(cellToChange(holder, row + r, column + c), one);
      }
    }
  };
  const type = (typed: unknown[][]): void => {
    each(typed, (cell, one) => {
      typeInto(cell, one, model.book);
      if (/TITRE\./i.test(cell.formula)) model.late.set(cell, model.syncs + lateBy);
    });
  };
  const range = remote(talk, "range", {
    ...(isNull ? { isNull } : {}),
    reads: rangeReads(on, where),
    sets: {
      values: type,
      formulas: type,
      numberFormat: (formats: string[][]) => {
        each(formats, (cell, format) => (cell.format = format));
      },
    },
    changes: { select: () => (model.selection = { ...where(), rows: 1, columns: 1 }) },
    gives: {
      getCell: (row: number, column: number) =>
        rangeAt(on, () => {
          const at = where();
          return { ...at, row: at.row + row, column: at.column + column, rows: 1, columns: 1 };
        }),
      getEntireColumn: () =>
        remote(talk, "column", {
          parts: {
            format: () =>
              remote(talk, "column.format", {
                sets: {
                  columnWidth: (points: number) => {
                    const { sheet, column } = where();
                    sheetToChange(model, sheet).widths[column] = points;
                  },
                },
              }),
          },
        }),
    },
    parts: {
      worksheet: () => remote(talk, "worksheet", { reads: { name: () => where().sheet } }),
      format: () =>
        remote(talk, "format", {
          parts: {
            font: () =>
              remote(talk, "font", { sets: { color: ignore, bold: ignore, size: ignore } }),
            fill: () => remote(talk, "fill", { sets: { color: ignore } }),
          },
        }),
      dataValidation: () =>
        remote(talk, "dataValidation", {
          sets: {
            rule: ({ list }: { list: { source: string } }) =>
              (first().words = list.source.split(",")),
            errorAlert: ignore,
          },
        }),
    },
  });
  wheres.set(range, where);
  return range;
}
