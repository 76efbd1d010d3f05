/**
 * Which array formula answers in a cell. Asked and told from left to right and row by row, as a sheet
 * is read, so that one entry for each column is enough.
 */
import type { Area, Place } from "../../sheet/area";
import { isWithin } from "../cell-address";
import { limits } from "../limits";

import { refuse } from "../problem";

export interface ArrayArea<T> {
  readonly area: Area;
  readonly about: T;
}

export class ArrayAreas<T> {
  private readonly inColumn = new Map<number, ArrayArea<T>>();
  private room: number = limits.cells;

  /** Areas of more cells than a workbook can have are no areas. */
  add(area: Area, about: T): void {
    if (area.rows * area.columns === 1) return;
    this.room -= area.rows * area.columns;
    if (this.room < 0) refuse({ code: "too-many-cells" });
    for (let column = area.column; column < area.column + area.columns; column++) {
      this.inColumn.set(column, { area, about });
    }
  }

  /** The array that answers in a cell which is not its first. */
  at(place: Place): ArrayArea<T> | undefined {
    const found = this.inColumn.get(place.column);
    if (!found || !isWithin(found.area, place)) return undefined;
    const isFirst = place.row === found.area.row && place.column === found.area.column;
    return isFirst ? undefined : found;
  }
}
