/** Why rows of a block cannot change places: found before anything is done. */
import type { Block } from "../../sheet/area";
import { cellName } from "../../sheet/cell-name";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { Fixed } from "../grid/guard";
import type { Lists } from "../choosing/lists";
import type { Holding } from "../holding/holding";

/** What sorting asks of the page. */
export interface SortTerms {
  readonly cells: WorkbookCells;
  readonly holding: Holding | undefined;
  readonly fixed: Fixed | undefined;
  /** Undefined without a file. */
  readonly lists?: Lists;
}

const overlaps = (
  { row, column, rows, columns }: Block,
  edges: { startRow: number; endRow: number; startColumn: number; endColumn: number },
): boolean =>
  edges.startRow < row + rows &&
  row <= edges.endRow &&
  edges.startColumn < column + columns &&
  column <= edges.endColumn;

/** A sentence that says why; undefined where rows may move. */
export function whyRowsStay(block: Block, terms: SortTerms): string | undefined {
  const { cells, holding, fixed, lists } = terms;
  const { sheet } = block;
  const held = cells.names.sheet(sheet);
  if (!held) return `There is no sheet ${sheet}.`;
  if (held.getMergeData().some((merged) => overlaps(block, merged))) {
    return "Some of these cells are merged, so rows cannot change places: split them in your spreadsheet program first.";
  }
  for (const { top, left, bottom, right } of cells.spills(sheet)) {
    const edges = { startRow: top, endRow: bottom, startColumn: left, endColumn: right };
    if (!overlaps(block, edges)) continue;
    return `The formula in ${cellName(top, left)} answers over several cells, so rows cannot change places.`;
  }
  const key = held.getSheetId();
  /** Columns whose rule does not go on to the last row. */
  const isEnded = new Set<number>();
  for (let row = block.row; row < block.row + block.rows; row += 1) {
    if (!held.getRowVisible(row)) {
      return `Row ${String(row + 1)} is hidden: show all rows before sorting.`;
    }
    for (let column = block.column; column < block.column + block.columns; column += 1) {
      const says = fixed?.sheets.has(sheet) ? fixed.refusesCell(sheet, row, column) : undefined;
      if (says !== undefined) return says;
      const rule = lists?.ruleAt({ sheet, row, column });
      const isOther = rule !== lists?.ruleAt({ sheet, row: block.row, column });
      if (isOther) isEnded.add(column);
      // rows that the table has grown by have none yet
      if (rule !== undefined && (isOther || isEnded.has(column))) {
        return `${cellName(row, column)} has another list or rule of what may be typed than the rows above it, so rows cannot change places.`;
      }
      if (holding?.reasonAt(key, row, column) === undefined) continue;
      return `The formula in ${cellName(row, column)} is not worked out here (it is grey), so rows cannot change places.`;
    }
  }
  return undefined;
}
