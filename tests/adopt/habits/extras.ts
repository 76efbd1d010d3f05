/** What stands in a logbook and is no part of it: totals directly below, a table of stock beside. */
import { cellName } from "./cell-names";
import type { Chance } from "./chance";
import type { Column, Key } from "./columns";
import type { Grid } from "./grid";
import type { Habit } from "./habit";

const summed: readonly Key[] = ["oil", "kilograms", "total", "methanol", "weighed"];
const averaged: readonly Key[] = ["acidValue", "ffa", "mean", "net", "rate"];

/** The sum or the average of some rows, in every column that can have one. */
function summedUp(
  grid: Grid,
  columns: readonly Column[],
  at: number,
  rows: readonly number[],
  hasAverages: boolean,
  isFormula: boolean,
): void {
  const { values } = grid.cells("");
  columns.forEach(({ key, format }, column) => {
    const isSum = summed.includes(key);
    if (!isSum && !(hasAverages && averaged.includes(key))) return;
    const held = rows.map((row) => Number(values[row]?.[column]));
    const sum = held.reduce((all, each) => all + each, 0);
    const area = `${cellName(rows[0] ?? 0, column)}:${cellName(rows.at(-1) ?? 0, column)}`;
    const value = isSum ? sum : sum / held.length;
    const formula = isFormula ? `=${isSum ? "SUM" : "AVERAGE"}(${area})` : "";
    grid.put(at, column, isFormula ? value : Number(value.toFixed(2)), formula, format);
  });
}

const isSummable = (columns: readonly Column[]): boolean =>
  columns.some(({ key }) => summed.includes(key));

/** A row between the others: of the rows since the last one. */
export function subtotal(
  grid: Grid,
  habit: Habit,
  chance: Chance,
  columns: readonly Column[],
  at: number,
  rows: number,
): void {
  const label = chance.of(["Subtotal", "Sub-total", "Sum", ""]);
  if (label !== "") grid.put(at, 0, label);
  const own = Array.from({ length: rows }, (_, each) => at - rows + each);
  if (isSummable(columns)) summedUp(grid, columns, at, own, false, habit.cells === "formulas");
}

function totals(
  grid: Grid,
  habit: Habit,
  chance: Chance,
  columns: readonly Column[],
  rows: readonly number[],
  last: number,
): void {
  // With nothing beside it, typed or worked out.
  const label = chance.of(["Total", "Totals", "Sum", "Total / average", ""]);
  if (label !== "") grid.put(last + 1, 0, label);
  const hasAverages = chance.yes(0.6);
  summedUp(grid, columns, last + 1, rows, hasAverages, habit.cells === "formulas");
}

function stock(grid: Grid, chance: Chance, from: number, headingRow: number): void {
  const isAdjacent = chance.yes(0.2);
  const column = from + (isAdjacent ? 0 : chance.whole(1, 2));
  const lines: readonly (readonly [string, number, string])[] = [
    ["KOH flake", 25, "kg"],
    ["Methanol", 200, "L"],
    ["Isopropanol", 10, "L"],
    ["Phenolphthalein", 2, "bottles"],
  ];
  ["Item", "In stock", "Unit"].forEach((heading, at) => {
    grid.put(headingRow, column + at, heading);
  });
  lines.forEach((line, row) => {
    line.forEach((value, at) => {
      grid.put(headingRow + 1 + row, column + at, value);
    });
  });
}

export function extras(
  grid: Grid,
  habit: Habit,
  chance: Chance,
  columns: readonly Column[],
  headingRow: number,
  lastRow: number,
  rows: readonly number[],
): void {
  if (habit.extras.totals) totals(grid, habit, chance, columns, rows, lastRow);
  if (habit.extras.stock) stock(grid, chance, columns.length, headingRow);
}
