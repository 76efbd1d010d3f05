/** The cells of a what-if table as a plan shows them, and as steps for a host. */
import type { Block, Cells, Step } from "../../../sheet/port";
import type { Area } from "../../../sheet/area";
import type { Layout } from "../../what-if/layout";
import { cellAt } from "../../../sheet/address";
import type { PlannedCell } from "../plan";
import { plannedCell } from "../planned-cell";
import { contentOf } from "../sheet-steps";
import { valueText } from "../preview-text";

/** A part of the table, as cells of its sheet. */
export const areaAt = (at: Block, area: Area): Block => ({
  sheet: at.sheet,
  row: at.row + area.row,
  column: at.column + area.column,
  rows: area.rows,
  columns: area.columns,
});

/** What a cell holds now, as text; "" when it is empty. Undefined cells: a sheet not there yet. */
function nowAt(cells: Cells | undefined, row: number, column: number): string {
  const formula = cells?.formulas[row]?.[column] ?? "";
  return formula === "" ? valueText(cells?.values[row]?.[column] ?? "") : formula;
}

/** Those that get something: a cell the table leaves alone is in no plan. */
export const plannedCells = (
  at: Block,
  rows: Layout["rows"],
  there: Cells | undefined,
): PlannedCell[] =>
  rows.flatMap((row, r) =>
    row.flatMap((cell, c) => {
      if (!cell) return [];
      const block = cellAt(at.sheet, at.row + r, at.column + c);
      const now = nowAt(there, r, c);
      const content = contentOf(cell);
      const { name: heading, format } = cell;
      return [plannedCell({ block, heading, content, format, now, isLost: now !== "" })];
    }),
  );

/** The masses and the doses are steps of their own: each is one formula, filled. */
export function tableSteps(at: Block, table: Layout): Step[] {
  const { masses, doses } = table;
  const within = (area: Area, row: number, column: number): boolean =>
    row >= area.row && column >= area.column && column < area.column + area.columns;
  const isFilled = (row: number, column: number): boolean =>
    within(masses, row, column) || within(doses, row, column);
  const others = table.rows.map((row, r) =>
    row.map((cell, c) => (isFilled(r, c) ? contentOf(null) : contentOf(cell))),
  );
  const filled = (area: Area): Step => ({
    do: "set-cells",
    block: areaAt(at, area),
    contents: table.rows
      .slice(area.row, area.row + area.rows)
      .map((row) => row.slice(area.column, area.column + area.columns).map(contentOf)),
  });
  return [{ do: "set-cells", block: at, contents: others }, filled(masses), filled(doses)];
}
