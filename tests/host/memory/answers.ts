/** What the workbook in memory answers to each question. */
import type {
  Block,
  CellContent,
  CellPlace,
  Cells,
  Found,
  Question,
  Table,
} from "../../../src/sheet/port";
import { cellAt, type MemoryBook, sheetNamed, tableNamed, usedBlock } from "./book";

/** What a calculation may ask while it works out a formula. */
export interface Surroundings {
  readonly book: MemoryBook;
  /** The result a cell shows. */
  valueAt(place: CellPlace): CellContent;
}

/** Works out formulas. The memory host has none of its own, so that it knows no function. */
export interface Calculation {
  result(formula: string, from: CellPlace, around: Surroundings): CellContent;
}

/** The results of one moment: each formula is worked out once, and a circle is an error. */
export function resultsOf(book: MemoryBook, calculation: Calculation): Surroundings {
  const known = new Map<string, CellContent>();
  const around: Surroundings = {
    book,
    valueAt(place) {
      const sheet = sheetNamed(book, place.sheet);
      if (!sheet) return { error: "#REF!" };
      const { value, formula } = cellAt(sheet, place.row, place.column);
      if (formula === "") return value;
      const key = `${place.row},${place.column},${sheet.name}`;
      const before = known.get(key);
      if (before !== undefined) return before;
      known.set(key, { error: "#REF!" });
      const result = calculation.result(formula, place, around);
      known.set(key, result);
      return result;
    },
  };
  return around;
}

const grid = <T>(block: Block, at: (row: number, column: number) => T): T[][] =>
  Array.from({ length: block.rows }, (_, row) =>
    Array.from({ length: block.columns }, (__, column) =>
      at(block.row + row, block.column + column),
    ),
  );

function cells(block: Block, around: Surroundings): Cells | undefined {
  const sheet = sheetNamed(around.book, block.sheet);
  if (!sheet) return undefined;
  const held = grid(block, (row, column) => cellAt(sheet, row, column));
  const place = (row: number, column: number): CellPlace => ({
    sheet: sheet.name,
    row: block.row + row,
    column: block.column + column,
  });
  return {
    kind: "cells",
    block: { ...block, sheet: sheet.name },
    values: held.map((cells, row) =>
      cells.map(({ value, formula }, column) =>
        formula === "" ? value : around.valueAt(place(row, column)),
      ),
    ),
    formulas: held.map((cells) => cells.map(({ formula }) => formula)),
    formats: held.map((cells) => cells.map(({ format }) => format)),
  };
}

function table(name: string, around: Surroundings): Table | undefined {
  const found = tableNamed(around.book, name);
  if (!found) return undefined;
  const headings = cells({ ...found.block, rows: 1 }, around)?.values[0] ?? [];
  const { isFiltered, hasTotals, block } = found;
  return {
    kind: "table",
    name: found.name,
    block,
    headings: headings.map(String),
    isFiltered,
    hasTotals,
  };
}

/** Each cell a block of its own, row by row; what holds no formula is not looked at. */
export function errorsIn(block: Block, around: Surroundings): Block[] {
  const sheet = sheetNamed(around.book, block.sheet);
  return Object.entries(sheet?.cells ?? {})
    .filter(([, { formula }]) => formula !== "")
    .map(([place]) => place.split(",").map(Number) as [number, number])
    .map(([row, column]): Block => ({ ...block, row, column, rows: 1, columns: 1 }))
    .filter(
      ({ row, column }) =>
        row >= block.row &&
        row < block.row + block.rows &&
        column >= block.column &&
        column < block.column + block.columns,
    )
    .filter((place) => typeof around.valueAt(place) === "object")
    .sort((a, b) => a.row - b.row || a.column - b.column);
}

const nothing: Found = { kind: "nothing" };

export function answer(question: Question, around: Surroundings, selection: Block): Found {
  const { book } = around;
  switch (question.ask) {
    case "cells":
      return cells(question.block, around) ?? nothing;
    case "values": {
      const found = cells(question.block, around);
      return found ? { kind: "values", block: found.block, values: found.values } : nothing;
    }
    case "errors": {
      const sheet = sheetNamed(book, question.sheet);
      const used = sheet && usedBlock(sheet);
      if (!sheet) return nothing;
      return { kind: "areas", blocks: used ? errorsIn(used, around) : [] };
    }
    case "selection":
      return cells(selection, around) ?? nothing;
    case "table":
      return table(question.name, around) ?? nothing;
    case "names":
      return {
        kind: "names",
        tables: book.tables.map(({ name }) => name),
        defined: Object.keys(book.definedNames),
      };
    case "sheets":
      return {
        kind: "sheets",
        isProtected: book.isProtected,
        sheets: book.sheets.map((sheet) => ({
          name: sheet.name,
          isProtected: sheet.isProtected,
          used: usedBlock(sheet),
        })),
      };
  }
}
