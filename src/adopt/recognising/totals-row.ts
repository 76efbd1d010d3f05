/** Rows of totals or averages that stand directly below a table, or between its rows: no rows of a logbook. */
import type { LogbookMapping } from "./mapping";
import type { RoleId } from "./roles";
import { heldCell, isHeld, type SheetCells } from "./sheet-cells";

const label = /^(?:grand |sub-?|running )?(?:totals?|sums?|averages?|means?)\b/i;
/** A column's cells taken together: of one column, over several rows. */
const overRows =
  /\b(?:SUM|AVERAGE|SUBTOTAL|MEDIAN|MAX|MIN|COUNTA?)\((?:\d+,)?\$?([A-Z]{1,3})\$?(\d+):\$?\1\$?(\d+)\)/i;

const names: readonly RoleId[] = ["date", "lot", "batch"];
const readings: readonly RoleId[] = ["titre", "blank", "sampleMass"];

const spansRows = (formula: string): boolean => {
  const found = overRows.exec(formula);
  return found !== null && found[2] !== found[3];
};

export function totalsReader(
  { columns }: LogbookMapping,
  cells: SheetCells,
): (row: number) => boolean {
  return (row) => {
    const held = columns
      .map(({ column, role }) => ({ role, cell: heldCell(cells, row, column) }))
      .filter(({ cell }) => isHeld(cell));
    const says = held.some(
      ({ role, cell: { value } }) =>
        role !== "note" && typeof value === "string" && label.test(value.trim()),
    );
    if (says) return true;
    // A sum so far beside a batch of its own is one of the batch's figures.
    const isNamed = held.some(({ role }) => names.includes(role) || readings.includes(role));
    return !isNamed && held.some(({ cell: { formula } }) => spansRows(formula));
  };
}
