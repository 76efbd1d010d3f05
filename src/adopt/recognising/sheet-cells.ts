/**
 * The cells of one sheet as plain values, wherever they came from: a host's answer or an opened file.
 * Rows and columns count from 0, from the sheet's own first cell.
 */
import type { Sheet, Workbook } from "../../xlsx";

export type LogbookValue = string | number | boolean | { readonly error: string };

export interface SheetCells {
  readonly sheet: string;
  /** The place of the first cell of the lists below. */
  readonly row: number;
  readonly column: number;
  /** "" where there is nothing. All three lists are rows of one width. */
  readonly values: readonly (readonly LogbookValue[])[];
  /** With the equals sign; "" for none. */
  readonly formulas: readonly (readonly string[])[];
  readonly formats: readonly (readonly string[])[];
  /** Rows are the sheet's columns, and columns its rows: its lots stand across. */
  readonly isAcross?: true;
}

/** What a host answers to a question for cells, as far as it is wanted here. */
export interface AnsweredCells {
  readonly block: { readonly sheet: string; readonly row: number; readonly column: number };
  readonly values: readonly (readonly LogbookValue[])[];
  readonly formulas: readonly (readonly string[])[];
  readonly formats: readonly (readonly string[])[];
}

export const cellsFromAnswer = ({
  block,
  values,
  formulas,
  formats,
}: AnsweredCells): SheetCells => ({
  sheet: block.sheet,
  row: block.row,
  column: block.column,
  values,
  formulas,
  formats,
});

const grid = <T>(rows: number, columns: number, fill: T): T[][] =>
  Array.from({ length: rows }, () => Array.from({ length: columns }, () => fill));

/** A sheet of an opened file. */
export function cellsFromFile({ looks }: Pick<Workbook, "looks">, sheet: Sheet): SheetCells {
  const held = sheet.cells.filter(({ value, formula }) => value !== undefined || formula);
  const rows = held.reduce((most, { row }) => Math.max(most, row + 1), 0);
  const columns = held.reduce((most, { column }) => Math.max(most, column + 1), 0);
  const values = grid<LogbookValue>(rows, columns, "");
  const formulas = grid(rows, columns, "");
  const formats = grid(rows, columns, "General");
  for (const { row, column, value, formula, look } of held) {
    (values[row] as LogbookValue[])[column] = value ?? "";
    (formulas[row] as string[])[column] = formula ?? "";
    (formats[row] as string[])[column] = looks[look]?.format ?? "General";
  }
  return { sheet: sheet.name, row: 0, column: 0, values, formulas, formats };
}

/** One cell; an empty one where the block does not reach. */
export interface HeldCell {
  readonly value: LogbookValue;
  readonly formula: string;
  readonly format: string;
}

const nothing: HeldCell = { value: "", formula: "", format: "General" };

export function heldCell(cells: SheetCells, row: number, column: number): HeldCell {
  const r = row - cells.row;
  const c = column - cells.column;
  const value = cells.values[r]?.[c];
  if (value === undefined) return nothing;
  return {
    value,
    formula: cells.formulas[r]?.[c] ?? "",
    format: cells.formats[r]?.[c] ?? "General",
  };
}

export const isHeld = ({ value, formula }: HeldCell): boolean =>
  formula !== "" || (typeof value === "string" ? value.trim() !== "" : true);

/** The first row and column after the last. */
export const endOf = (cells: SheetCells): { row: number; column: number } => ({
  row: cells.row + cells.values.length,
  column: cells.column + (cells.values[0]?.length ?? 0),
});
