/**
 * The formula a column gives to the record's row. A column keeps the one it has: one formula that
 * differs, written into a table's column, may replace the formulas of the whole column.
 */
import type { Table } from "../../../sheet/port";
import type { Column, TableShape } from "../../tables/column";
import { targetOf } from "../../../sheet/formula/reference";
import { tokensOf } from "../../../sheet/formula/token";
import { placeOf } from "../headings";
import { filledDown } from "../../../xlsx/formulas/shared";
import { isSameFormula } from "../../../sheet/formula/same-formula";
import { type Logbook, readCell } from "../snapshot";

export type ColumnFormula =
  /** As in the nearest row that has one, or ours where none has. */
  | { readonly kind: "formula"; readonly formula: string; readonly isOurs: boolean }
  | { readonly kind: "none" }
  /** Ours, but it would read other cells here than it means. */
  | { readonly kind: "other-order" };

/** The formula of a cell some rows up, as it reads in the record's row; "" for none. */
function fromAbove(logbook: Logbook, row: number, column: number, distance: number): string {
  const { formula } = readCell(logbook, row - distance, column);
  return formula === "" ? "" : filledDown(formula, distance);
}

/** Of the rows above, then of those below; the table's own rows alone. */
function nearest(logbook: Logbook, row: number, column: number): string | undefined {
  const { rows } = logbook.table.block;
  for (let other = Math.min(row, rows) - 1; other >= 1; other -= 1) {
    const formula = fromAbove(logbook, row, column, row - other);
    if (formula !== "") return formula;
  }
  for (let other = row + 1; other < rows; other += 1) {
    const formula = fromAbove(logbook, row, column, row - other);
    if (formula !== "") return formula;
  }
  return undefined;
}

/** Does some row of the column hold our own formula? */
function holdsOurs(logbook: Logbook, column: number, ours: string): boolean {
  const { name, block } = logbook.table;
  const texts = new Set<string>();
  for (let row = 1; row < block.rows; row += 1) {
    texts.add(readCell(logbook, row, column).formula);
  }
  return [...texts].some((text) => text !== "" && isSameFormula(text, ours, name));
}

/** Does a part of the table, from one heading to another, hold the columns it holds in ours? */
function isInOrder(
  columns: readonly string[],
  headings: readonly string[],
  shape: TableShape,
): boolean {
  const [first, last = first] = columns;
  if (first === undefined || last === undefined) return true;
  const ours = shape.columns.map((column) => column.heading);
  const meant = ours.slice(placeOf(first, ours), (placeOf(last, ours) ?? 0) + 1);
  const start = placeOf(first, headings);
  return start !== undefined && meant.every((each, at) => placeOf(each, headings) === start + at);
}

const isCalled = (name: string, table: string): boolean =>
  name.toLowerCase() === table.toLowerCase();

/**
 * Another table's columns are not ours to order, but they must be there: one of ours that an earlier
 * Titrebook made lacks some.
 */
function isThere(columns: readonly string[], table: string, others: readonly Table[]): boolean {
  const found = others.find(({ name }) => isCalled(name, table));
  return (
    found === undefined || columns.every((each) => placeOf(each, found.headings) !== undefined)
  );
}

/** Does every reference of a formula of ours mean here what it means in our own table? */
export const isUsable = (
  formula: string,
  headings: readonly string[],
  shape: TableShape,
  others: readonly Table[],
): boolean =>
  tokensOf(formula)
    .filter(({ kind }) => kind === "structured")
    .every(({ text }) => {
      const target = targetOf({ text, shape: "structured" });
      if (target.kind !== "structured") return false;
      const { table, columns } = target;
      return table === "" || isCalled(table, shape.name)
        ? isInOrder(columns, headings, shape)
        : isThere(columns, table, others);
    });

/** A column of ours: our own formula where it has that in any row or none at all; else the nearest. */
export function ourColumnFormula(
  logbook: Logbook,
  row: number,
  column: number,
  ours: Column,
  shape: TableShape,
): ColumnFormula {
  const { name, headings } = logbook.table;
  const near = nearest(logbook, row, column);
  if (near !== undefined) {
    const own = ours.formula;
    const isOurs = own !== undefined && isSameFormula(near, own, name);
    // beside ours, another one is what somebody put into that row alone
    const formula = !isOurs && own !== undefined && holdsOurs(logbook, column, own) ? own : near;
    return { kind: "formula", formula, isOurs: isOurs || formula === own };
  }
  if (ours.formula === undefined) return { kind: "none" };
  return isUsable(ours.formula, headings, shape, logbook.others)
    ? { kind: "formula", formula: ours.formula, isOurs: true }
    : { kind: "other-order" };
}

/** How many rows must agree before a column that is not ours counts as calculated. */
const rowsCompared = 50;

/** A column that is not ours: its formula only when the rows above all have the same one. */
export function otherColumnFormula(
  logbook: Logbook,
  row: number,
  column: number,
): string | undefined {
  const nearest = row > 1 ? fromAbove(logbook, row, column, 1) : "";
  if (nearest === "") return undefined;
  for (let distance = 2; distance < Math.min(row, rowsCompared); distance += 1) {
    const other = fromAbove(logbook, row, column, distance);
    if (!isSameFormula(other, nearest, logbook.table.name)) return undefined;
  }
  return nearest;
}
