/**
 * Calculated cells of the other rows that lost their formula: emptied with the readings, or left with an
 * error as if it had been typed; and those of rows that become part of the table. In a table with all
 * our columns alone: in any other, an empty cell may be meant.
 */
import type { Content, Step } from "../../sheet/port";
import { cellAt } from "../../sheet/address";
import type { TableShape } from "../tables/column";
import { isHeading, placeOf } from "./headings";
import { ourColumnFormula } from "./logbook/column-formula";
import type { PlannedCell } from "./plan";
import { plannedCell } from "./planned-cell";
import { isEmpty, type Logbook, nowText, readCell } from "./snapshot";
import { isLeftError, type TargetRow } from "./record/target-row";

export interface FormulasBack {
  readonly cells: readonly PlannedCell[];
  readonly steps: readonly Step[];
}

function cellsIn(logbook: Logbook, shape: TableShape, row: number): PlannedCell[] {
  const { headings, block: table } = logbook.table;
  return headings.flatMap((heading, column): PlannedCell[] => {
    const ours = shape.columns.find((each) => isHeading(each.heading, heading));
    const now = readCell(logbook, row, column);
    if (ours?.formula === undefined || !(isEmpty(now) || isLeftError(now))) return [];
    const found = ourColumnFormula(logbook, row, column, ours, shape);
    if (found.kind !== "formula") return [];
    const { formula } = found;
    const isPlain = now.format === "General" || now.format === "@";
    const format = isPlain ? (ours.format ?? "General") : now.format;
    const block = cellAt(table.sheet, table.row + row, table.column + column);
    const content: Content = { kind: "formula", formula, format };
    return [plannedCell({ block, heading, now: nowText(now), content, shown: formula })];
  });
}

/** One step for each run of rows. */
function stepsFor({ table }: Logbook, cells: readonly PlannedCell[]): Step[] {
  const byRow = new Map<number, Content[]>();
  for (const { block, content } of cells) {
    const row = byRow.get(block.row) ?? table.headings.map((): Content => ({ kind: "keep" }));
    row[block.column - table.block.column] = content;
    byRow.set(block.row, row);
  }
  const runs: { row: number; contents: Content[][] }[] = [];
  for (const [row, contents] of byRow) {
    const last = runs.at(-1);
    if (last && last.row + last.contents.length === row) last.contents.push(contents);
    else runs.push({ row, contents: [contents] });
  }
  return runs.map(({ row, contents }) => ({
    do: "set-cells",
    block: { ...table.block, row, rows: contents.length },
    contents,
  }));
}

export function formulasBack(logbook: Logbook, shape: TableShape, target: TargetRow): FormulasBack {
  const { headings, block } = logbook.table;
  const isWhole = shape.columns.every(({ heading }) => placeOf(heading, headings) !== undefined);
  const cells: PlannedCell[] = [];
  for (let row = 1; row < Math.max(block.rows, target.row); row += 1) {
    const isTakenIn = row >= block.rows;
    if (row === target.row || !(isWhole || isTakenIn)) continue;
    cells.push(...cellsIn(logbook, shape, row));
  }
  return { cells, steps: stepsFor(logbook, cells) };
}
