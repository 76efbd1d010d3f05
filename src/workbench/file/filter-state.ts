/** Filters as the grid holds them: in the cell of the heading, with the area they are of. */
import {
  BooleanNumber,
  type IObjectArrayPrimitiveType,
  type IRowData,
  ObjectMatrix,
  type Worksheet,
} from "@univerjs/core";
import type { Area, Criterion } from "../../xlsx";

export interface CellFilter {
  /** Headings and rows, as it was when the filter was set; that of a table is its own. */
  readonly area: Area;
  readonly criterion: Criterion;
}

export interface FilterState extends CellFilter {
  readonly row: number;
  readonly column: number;
}

export function filtersIn(sheet: Worksheet): FilterState[] {
  const found: FilterState[] = [];
  new ObjectMatrix(sheet.getCellMatrix().getMatrix()).forValue((row, column, data) => {
    const filter = data?.custom?.filter as CellFilter | undefined;
    if (filter) found.push({ ...filter, row, column });
  });
  return found;
}

export const hiddenIn = (rows: IObjectArrayPrimitiveType<Partial<IRowData>>): ReadonlySet<number> =>
  new Set(
    Object.entries(rows).flatMap(([row, { hd }]) => (hd === BooleanNumber.TRUE ? Number(row) : [])),
  );
