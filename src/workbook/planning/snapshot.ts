/** What was read of a workbook before planning: its sheets, its names, and the logbook's table. */
import type { Cells, CellContent, Names, Sheets, Table } from "../../sheet/port";
import { valueText } from "./preview-text";

export interface Logbook {
  readonly table: Table;
  /** The table's cells, headings first, and those below it as far as they may hold anything. */
  readonly cells: Cells;
  /** The other tables of the workbook. */
  readonly others: readonly Table[];
}

export interface Snapshot {
  readonly sheets: Sheets;
  readonly names: Names;
  /** The other tables of the workbook. */
  readonly others: readonly Table[];
  /** Undefined when there is no table of that name. */
  readonly logbook: Logbook | undefined;
}

/** One cell of a table as it was read; places count from the table's first heading. */
export interface ReadCell {
  readonly value: CellContent;
  /** "" when it holds none. */
  readonly formula: string;
  readonly format: string;
}

export const readCell = ({ cells }: Logbook, row: number, column: number): ReadCell => ({
  value: cells.values[row]?.[column] ?? "",
  formula: cells.formulas[row]?.[column] ?? "",
  format: cells.formats[row]?.[column] ?? "General",
});

export const isEmpty = ({ value, formula }: ReadCell): boolean => value === "" && formula === "";

/** What is there now, as text. */
export const nowText = ({ value, formula, format }: ReadCell): string =>
  formula === "" ? valueText(value, format) : formula;
