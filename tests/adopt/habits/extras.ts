/** What stands in a logbook and is no part of it: totals directly below, a table of stock beside. */
import { cellName } from "./cell-names";
import type { Chance } from "./chance";
import type { Column, Key } from "./columns";
import type { Grid } from "./grid";
import type { Habit } from "./habit";

const summed: readonly Key[] = ["oil", "kilograms", "total", "methanol", "weighed"];
const averaged: readonly Key[] = ["acidValue", "ffa", "mean", "net", "rate"];

function totals(
  grid: Grid,
  habit: Habit,
  chance: Chance,
  columns: readonly Column[],
  first: number,
  last: number,
): void {
  const valuesOf = (column: number): number[] => {
    const { values } = grid.cells("");
    return values.slice(first, last + 1).map((row) => Number(row[column]));
  };
  const label = chance.of(["Total", "Totals", "Sum", "Total / average", ""]);
  if (label !== "") grid.put(last + 1, 0, label);
  const averages = chance.yes(0.6);
  columns.forEach(({ key, format }, column) => {
    const isSum = summed.includes(key);
    if (!isSum && !(averages && averaged.includes(key))) return;
    const held = valuesOf(column);
    const sum = held.reduce((all, each) => all + each, 0);
    const area = `${cellName(first, column)}:${cellName(last, column)}`;
    const formula =
      habit.cells === "formulas" || label === "" ? `=${isSum ? "SUM" : "AVERAGE"}(${area})` : "";
    const value = isSum ? sum : sum / held.length;
    grid.put(last + 1, column, formula === "" ? Number(value.toFixed(2)) : value, formula, format);
  });
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
): void {
  if (habit.extras.totals) totals(grid, habit, chance, columns, headingRow + 1, lastRow);
  if (habit.extras.stock) stock(grid, chance, columns.length, headingRow);
}
