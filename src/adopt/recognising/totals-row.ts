/** Rows of totals or averages that stand directly below a table, or between its rows: no rows of a logbook. */
import type { RoleId } from "./roles";
import { heldCell, type HeldCell, isHeld, type SheetCells } from "./sheet-cells";

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

/** Sums of a column's figures: since the table began, and since the last row of totals. */
class Sums {
  private readonly all = new Map<number, { sum: number; count: number }>();
  private since = new Map<number, { sum: number; count: number }>();

  add(column: number, value: number): void {
    for (const kept of [this.all, this.since]) {
      const { sum, count } = kept.get(column) ?? { sum: 0, count: 0 };
      kept.set(column, { sum: sum + value, count: count + 1 });
    }
  }

  startAnew(): void {
    this.since = new Map();
  }

  /** Is it the sum or the average of what stands above it?
   * @param allowed how far off it may be */
  isOf(column: number, value: number, allowed = 0): boolean {
    return [this.all, this.since].some((kept) => {
      const { sum, count } = kept.get(column) ?? { sum: 0, count: 0 };
      const isNear = (of: number): boolean =>
        Math.abs(value - of) <= Math.max(rounding * Math.abs(of), allowed);
      return count >= leastRows && (isNear(sum) || isNear(sum / count));
    });
  }
}

const rounding = 0.005;

/** Half of the last digit in which a figure is typed, and a tie: an average of 0.0223 may stand as 0.02. */
const halfDigit = (value: number): number =>
  (0.5 + 1e-9) * 10 ** -(/\.(\d+)$/.exec(String(value))?.[1]?.length ?? 0);

/** A row that adds up one or two others may as well be a row of its own. */
const leastRows = 3;

export interface Table {
  readonly columns: readonly { readonly column: number; readonly role: RoleId }[];
  readonly place: {
    readonly firstRow: number;
    readonly lastRow: number;
    readonly headingRow?: number;
  };
}

/** Typed without a word beside them: nothing names the row, and every figure adds up what is above it,
 * the coarse ones among them to their digits. */
function addsUp(held: readonly Held[], sums: Sums): boolean {
  const figures = held.flatMap(({ column, cell: { value } }) =>
    typeof value === "number" ? [{ column, value }] : [],
  );
  return (
    figures.some(({ column, value }) => sums.isOf(column, value)) &&
    figures.every(({ column, value }) => sums.isOf(column, value, halfDigit(value)))
  );
}

interface Held {
  readonly column: number;
  readonly role: RoleId;
  readonly cell: HeldCell;
}

function saysTotals(held: readonly Held[]): boolean {
  const says = held.some(
    ({ role, cell: { value } }) =>
      role !== "note" && typeof value === "string" && label.test(value.trim()),
  );
  if (says) return true;
  // A sum so far beside a batch of its own is one of the batch's figures.
  const isNamed = held.some(({ role }) => names.includes(role) || readings.includes(role));
  return !isNamed && held.some(({ cell: { formula } }) => spansRows(formula));
}

/** The headings said again, at the top of a printed page. */
function saysHeadings(held: readonly Held[], headings: ReadonlyMap<number, string>): boolean {
  const again = held.filter(
    ({ column, cell: { value } }) =>
      typeof value === "string" && value.trim() !== "" && value.trim() === headings.get(column),
  );
  return again.length >= 2 && again.length >= held.length / 2;
}

export function totalsReader(
  { columns, place }: Table,
  cells: SheetCells,
): (row: number) => boolean {
  const found = new Set<number>();
  const sums = new Sums();
  const headings = new Map(
    place.headingRow === undefined
      ? []
      : columns.map(({ column }) => [
          column,
          String(heldCell(cells, place.headingRow ?? 0, column).value).trim(),
        ]),
  );
  const isNaming = columns.some(({ role }) => names.includes(role));
  for (let row = place.firstRow; row <= place.lastRow; row += 1) {
    const held = columns
      .map(({ column, role }) => ({ column, role, cell: heldCell(cells, row, column) }))
      .filter(({ cell }) => isHeld(cell));
    const isNamed = held.some(({ role }) => names.includes(role));
    if (saysHeadings(held, headings)) {
      found.add(row);
      continue;
    }
    if (saysTotals(held) || (isNaming && !isNamed && addsUp(held, sums))) {
      found.add(row);
      sums.startAnew();
      continue;
    }
    for (const { column, cell } of held)
      if (typeof cell.value === "number") sums.add(column, cell.value);
  }
  return (row) => found.has(row);
}

/** The table's rows without the totals at its end. */
export function withoutTotals<P extends Table["place"]>(
  columns: Table["columns"],
  place: P,
  cells: SheetCells,
): P {
  const isTotals = totalsReader({ columns, place }, cells);
  const isEmpty = (row: number): boolean =>
    columns.every(({ column }) => !isHeld(heldCell(cells, row, column)));
  let { lastRow } = place;
  while (lastRow > place.firstRow && (isTotals(lastRow) || isEmpty(lastRow))) lastRow -= 1;
  return { ...place, lastRow };
}
