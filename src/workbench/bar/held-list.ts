/** What one is told of the formulas of an open workbook that are shown in grey. */
import type { CellPlace } from "../../sheet/area";
import { cellName } from "../../sheet/cell-name";
import { counted } from "../../sheet/counted";
import type { Grid } from "../grid/mount";
import { placeAt } from "../holding/cell-keys";
import type { Reason } from "../holding/reasons";
import type { Part } from "./news";

export type Holds = Pick<Grid, "holding" | "cells">;

interface Grey {
  readonly sheet: string;
  readonly key: number;
  readonly reason: Reason;
}

/** Reasons said one by one; the rest is counted. */
const mostReasons = 8;

const formulas = (cells: Iterable<Grey>): Grey[] =>
  [...cells].filter(({ reason }) => reason.kind !== "part");

/** Each reason with the first cell it is about. */
function reasonsOf(cells: readonly Grey[], grid: Holds): string[] {
  const found = new Map<string, { first: string; count: number }>();
  let reading = 0;
  for (const { sheet, key, reason } of cells) {
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
    ...(reading > 0 ? [`${counted(reading, "more cell")} worked out from these.`] : []),
  ];
}

const held = ({ holding }: Holds): Grey[] => formulas(holding.cells());

const doubted = ({ holding }: Holds): Grey[] =>
  formulas(holding.doubtfulCells()).filter(({ sheet, key }) => {
    const { row, column } = placeAt(key);
    return !holding.reasonAt(sheet, row, column);
  });

/** How many formulas are shown in grey. */
export const greyCount = (grid: Holds): number => held(grid).length + doubted(grid).length;

/** Both kinds, each under a line of its own; empty where nothing is grey. */
export function greyList(grid: Holds): Part[] {
  const kinds = [
    [
      held(grid),
      "with the file's own figure, which does not change here: open the file in the program it was made with to bring it up to date.",
    ],
    [
      doubted(grid),
      "worked out here, and not saved: open the saved file in your own program, which works it out.",
    ],
  ] as const;
  return kinds.flatMap(([cells, says]): Part[] =>
    cells.length === 0
      ? []
      : [
          {
            says: `${counted(cells.length, "cell")} in grey, ${says}`,
            items: reasonsOf(cells, grid),
          },
        ],
  );
}

/** How many held formulas go by cells that are to change. */
export const affectedIn =
  ({ holding, cells }: Holds) =>
  (changed: readonly CellPlace[]): number =>
    holding.affected(
      changed.map(({ sheet, row, column }) => ({ sheet: cells.names.sheetId(sheet), row, column })),
    );
