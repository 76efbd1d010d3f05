/** The workbook that the memory host keeps: plain values, copied whole for every undo step. */
import type { Block, CellScalar, Chart, Style } from "../../../src/sheet/port";

export interface MemoryCell {
  /** "" where nothing was typed. A formula's value is worked out when it is read. */
  value: CellScalar;
  /** With its equals sign; "" for none. */
  formula: string;
  format: string;
  style?: Style;
  note?: string;
  words?: readonly string[];
}

export interface MemorySheet {
  name: string;
  isProtected: boolean;
  /** By "row,column". */
  cells: Record<string, MemoryCell>;
  widths: Record<number, number>;
  frozenRows: number;
  charts: Chart[];
  /** What of it is printed, on one page. */
  print?: { readonly block: Block; readonly landscape: boolean; readonly secondPage?: number };
}

export interface MemoryTable {
  name: string;
  block: Block;
  isFiltered: boolean;
  hasTotals: boolean;
}

export interface MemoryBook {
  sheets: MemorySheet[];
  tables: MemoryTable[];
  /** What each defined name refers to, without an equals sign. */
  definedNames: Record<string, string>;
  isReadOnly: boolean;
  /** No sheet can be added. */
  isProtected: boolean;
}

export const emptySheet = (name: string): MemorySheet => ({
  name,
  isProtected: false,
  cells: {},
  widths: {},
  frozenRows: 0,
  charts: [],
});

export const emptyBook = (): MemoryBook => ({
  sheets: [emptySheet("Sheet1")],
  tables: [],
  definedNames: {},
  isReadOnly: false,
  isProtected: false,
});

const emptyCell = (): MemoryCell => ({ value: "", formula: "", format: "General" });

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

export const sheetNamed = (book: MemoryBook, name: string): MemorySheet | undefined =>
  book.sheets.find((sheet) => isSame(sheet.name, name));

export const tableNamed = (book: MemoryBook, name: string): MemoryTable | undefined =>
  book.tables.find((table) => isSame(table.name, name));

export const isNameTaken = (book: MemoryBook, name: string): boolean =>
  [...book.tables.map((table) => table.name), ...Object.keys(book.definedNames)].some((each) =>
    isSame(each, name),
  );

/** The cell at a place, to read. */
export const cellAt = (sheet: MemorySheet, row: number, column: number): MemoryCell =>
  sheet.cells[`${String(row)},${String(column)}`] ?? emptyCell();

/** The cell at a place, to change. */
export const cellToChange = (sheet: MemorySheet, row: number, column: number): MemoryCell =>
  (sheet.cells[`${String(row)},${String(column)}`] ??= emptyCell());

/** The block of a sheet that holds anything; undefined when nothing does. */
export function usedBlock(sheet: MemorySheet): Block | undefined {
  const places = Object.entries(sheet.cells)
    .filter(([, { value, formula }]) => value !== "" || formula !== "")
    .map(([place]) => place.split(",").map(Number) as [number, number]);
  if (places.length === 0) return undefined;
  const rows = places.map(([row]) => row);
  const columns = places.map(([, column]) => column);
  const row = Math.min(...rows);
  const column = Math.min(...columns);
  return {
    sheet: sheet.name,
    row,
    column,
    rows: Math.max(...rows) - row + 1,
    columns: Math.max(...columns) - column + 1,
  };
}
