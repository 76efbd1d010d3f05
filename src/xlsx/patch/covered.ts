/** Refuses to write under merged cells, where nobody would see it. */
import { areaName } from "../../sheet/cell-name";
import { named, readArea } from "../cell-address";
import { limits } from "../limits";
import type { Area } from "../../sheet/area";
import { refuse } from "../problem";
import { attribute } from "../xml/scan";
import { childOf, childrenOf, type Node } from "../xml/tree";
import { isFilling, type WantedCells } from "./wanted";

/** The first of the rows, in rising order, that is not above a row. */
function firstFrom(rows: readonly number[], row: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle] as number) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

export function refuseCovered(sheet: string, frame: Node, wanted: WantedCells): void {
  const rows = wanted.rowNumbers();
  let work = limits.overlapping * 1000;
  for (const node of childrenOf(childOf(frame, "mergeCells"), "mergeCell")) {
    const area = readArea(attribute(node, "ref") ?? "");
    if (!area || area.rows * area.columns === 1) continue;
    for (let at = firstFrom(rows, area.row); (rows[at] ?? Infinity) < area.row + area.rows; at++) {
      const cells = wanted.inRow(rows[at] as number);
      work -= cells.length;
      if (work < 0) refuse({ code: "damaged", part: sheet, detail: "its merged cells overlap" });
      refuseInRow(sheet, area, cells);
    }
  }
}

function refuseInRow(sheet: string, area: Area, cells: ReturnType<WantedCells["inRow"]>): void {
  for (const cell of cells) {
    const isInside = cell.column >= area.column && cell.column < area.column + area.columns;
    const isFirst = cell.row === area.row && cell.column === area.column;
    if (!isInside || isFirst || !isFilling(cell)) continue;
    const name = named(sheet, cell.row, cell.column);
    refuse({ code: "in-merged-cells", cell: name, area: areaName(area) });
  }
}
