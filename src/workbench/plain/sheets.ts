/** The open workbook as plain tables: what the page shows before its grid, and beside it on request. */
import type { CellPlace } from "../../sheet/area";
import { shownValue } from "../engine/formatted";
import type { WorkbookCells } from "../engine/workbook-cells";

export interface PlainCell {
  readonly text: string;
  readonly isNumber: boolean;
  readonly isError: boolean;
  readonly isCalculated: boolean;
  /** The heading of a table's column. */
  readonly isHeading: boolean;
}

export interface PlainSheet {
  readonly name: string;
  readonly rows: readonly (readonly PlainCell[])[];
  /** Rows below that are left out: a page of a hundred thousand cells helps nobody. */
  readonly leftOut: number;
}

/** Rows of a sheet that are shown. */
const most = 500;

function plainCell(cells: WorkbookCells, place: CellPlace, isHeading: boolean): PlainCell {
  const value = cells.value(place);
  return {
    text: shownValue(value, cells.format(place)),
    isNumber: typeof value === "number",
    isError: typeof value === "object" && value !== null,
    isCalculated: cells.formula(place) !== "",
    isHeading,
  };
}

const isEmpty = (row: readonly PlainCell[]): boolean => row.every((cell) => cell.text === "");

function withoutEmptyTail(rows: PlainCell[][]): PlainCell[][] {
  const tail = [...rows].reverse().findIndex((row) => !isEmpty(row));
  return tail === -1 ? [] : rows.slice(0, rows.length - tail);
}

function plainSheet(cells: WorkbookCells, sheet: string): PlainSheet {
  const extent = cells.names.extent(sheet);
  const headingRows = new Set(cells.names.tables(sheet).map((table) => table.top));
  const all = (extent?.bottom ?? -1) + 1;
  const rows = Array.from({ length: Math.min(all, most) }, (_, row) =>
    Array.from({ length: (extent?.right ?? -1) + 1 }, (__, column) =>
      plainCell(cells, { sheet, row, column }, headingRows.has(row)),
    ),
  );
  return { name: sheet, rows: withoutEmptyTail(rows), leftOut: Math.max(0, all - most) };
}

export const plainSheets = (cells: WorkbookCells): PlainSheet[] =>
  cells.names.sheets.map((sheet) => plainSheet(cells, sheet));
