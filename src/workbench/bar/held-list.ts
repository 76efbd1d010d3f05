/** What one is told of the formulas of an open workbook that are not worked out here. */
import type { CellPlace } from "../../sheet/area";
import { cellName } from "../../sheet/cell-name";
import { counted } from "../../sheet/counted";
import type { Grid } from "../grid/mount";
import { placeAt } from "../holding/cell-keys";

export type Holds = Pick<Grid, "holding" | "cells">;

/** Reasons said one by one; the rest is counted. */
const mostReasons = 8;

function held({ holding }: Holds) {
  return [...holding.cells()].filter(({ reason }) => reason.kind !== "part");
}

export function heldWords(grid: Holds): string {
  const all = held(grid);
  const count = counted(all.length, "formula");
  return `${count} not worked out here, shown in grey with the result of before, and kept as in the file:`;
}

/** Each reason with the first cell it is about. */
export function heldList(grid: Holds): string[] {
  const found = new Map<string, { first: string; count: number }>();
  let reading = 0;
  for (const { sheet, key, reason } of held(grid)) {
    if (reason.kind !== "own") {
      reading += 1;
      continue;
    }
    const known = found.get(reason.says);
    if (known) {
      known.count += 1;
      continue;
    }
    const { row, column } = placeAt(key);
    const name = grid.cells.names.workbook.getSheetBySheetId(sheet)?.getName() ?? sheet;
    found.set(reason.says, { first: `${name} ${cellName(row, column)}`, count: 1 });
  }
  const lines = [...found].map(
    ([says, { first, count }]) =>
      `${first}${count === 1 ? "" : ` and ${String(count - 1)} more`}: ${says}`,
  );
  const rest = lines.length - mostReasons;
  return [
    ...lines.slice(0, mostReasons),
    ...(rest > 0 ? [`${counted(rest, "other reason")}; each cell says its own in the pane.`] : []),
    ...(reading > 0 ? [`${counted(reading, "formula")} reading such cells.`] : []),
  ];
}

/** How many held formulas go by cells that are to change. */
export const affectedIn =
  ({ holding, cells }: Holds) =>
  (changed: readonly CellPlace[]): number =>
    holding.affected(
      changed.map(({ sheet, row, column }) => ({ sheet: cells.names.sheetId(sheet), row, column })),
    );
