/**
 * The row a record goes to: the first whose inputs are all empty, in order, or a new row below the
 * table. Formulas may stand in it, waiting for readings. A row that holds something else is occupied:
 * nothing is written over, and the next free row is taken once somebody says so.
 */
import type { Table } from "../../../sheet/port";
import type { TableShape } from "../../tables/column";
import { isHeading } from "../headings";
import { isSameFormula } from "../../../sheet/formula/same-formula";
import { filledDown } from "../../../xlsx/formulas/shared";
import { isEmpty, type Logbook, type ReadCell, readCell } from "../snapshot";

/** The first row without inputs, or the first in which nothing at all stands in the way. */
export type RowChoice = "first" | "next free";

export interface TargetRow {
  /** Counted from the headings: 1 is the table's first row. */
  readonly row: number;
  /** The table must grow to take it. */
  readonly isNew: boolean;
  /** Columns, counted from the table's first, whose cells in this row hold what a record would replace. */
  readonly inTheWay: readonly number[];
}

/** A formula that two rows near by have too is the column's; alone it is this row's reading (=2.4+0.05). */
function isColumnFormula(logbook: Logbook, row: number, column: number): boolean {
  const { name, block } = logbook.table;
  const { formula } = readCell(logbook, row, column);
  const alike = [-2, -1, 1, 2].filter((away) => {
    const near = row + away;
    if (near < 1 || near >= block.rows) return false;
    const other = readCell(logbook, near, column).formula;
    return other !== "" && isSameFormula(filledDown(formula, away), other, name);
  });
  return alike.length >= 2;
}

/** A result that is no result: left behind where a formula was lost. */
export const isLeftError = ({ value, formula }: ReadCell): boolean =>
  formula === "" && typeof value === "object";

const columnsOf = ({ table }: Logbook, { columns }: TableShape, kind: "input" | "calculated") =>
  table.headings.flatMap((heading, column) =>
    columns.some((ours) => ours.kind === kind && isHeading(ours.heading, heading)) ? [column] : [],
  );

/** The first row of the sheet, at or below the table's end, that no table may reach over. */
const barrier = ({ table, others }: Logbook): number => {
  const { block } = table;
  const isBelow = ({ block: other }: Table): boolean =>
    other.sheet === block.sheet &&
    other.row >= block.row + block.rows &&
    other.column < block.column + block.columns &&
    block.column < other.column + other.columns;
  return Math.min(Infinity, ...others.filter(isBelow).map((other) => other.block.row)) - block.row;
};

/** Undefined when there is no such row. */
export function targetRow(
  logbook: Logbook,
  shape: TableShape,
  choice: RowChoice = "first",
): TargetRow | undefined {
  const { table, cells } = logbook;
  const inputs = columnsOf(logbook, shape, "input");
  const results = columnsOf(logbook, shape, "calculated");
  const isFilled = (row: number, column: number): boolean => {
    const { value, formula } = readCell(logbook, row, column);
    return formula === "" ? value !== "" : !isColumnFormula(logbook, row, column);
  };
  for (let row = 1; row < table.block.rows; row += 1) {
    if (inputs.some((column) => isFilled(row, column))) continue;
    const inTheWay = results.filter((column) => {
      const cell = readCell(logbook, row, column);
      return cell.formula === "" && !isEmpty(cell) && !isLeftError(cell);
    });
    if (inTheWay.length === 0 || choice === "first") return { row, isNew: false, inTheWay };
  }
  // what lies further down was not looked at
  for (let row = table.block.rows; row < Math.min(barrier(logbook), cells.block.rows); row += 1) {
    const inTheWay = table.headings.flatMap((_, column) =>
      isEmpty(readCell(logbook, row, column)) ? [] : [column],
    );
    if (inTheWay.length === 0 || choice === "first") return { row, isNew: true, inTheWay };
  }
  return undefined;
}

/** So many rows for as many records: those without inputs, in order, then new ones right below the table. */
export function freeRows(logbook: Logbook, shape: TableShape, count: number): TargetRow[] {
  const { table, cells } = logbook;
  const inputs = columnsOf(logbook, shape, "input");
  const isBare = (row: number): boolean =>
    inputs.every((column) => isEmpty(readCell(logbook, row, column)));
  const within = Array.from({ length: table.block.rows - 1 }, (_, at) => at + 1)
    .filter(isBare)
    .map((row): TargetRow => ({ row, isNew: false, inTheWay: [] }));
  const below: TargetRow[] = [];
  const end = Math.min(barrier(logbook), cells.block.rows + count);
  for (let row = table.block.rows; row < end && below.length < count; row += 1) {
    if (table.headings.some((_, column) => !isEmpty(readCell(logbook, row, column)))) break;
    below.push({ row, isNew: true, inTheWay: [] });
  }
  return [...within, ...below].slice(0, count);
}
