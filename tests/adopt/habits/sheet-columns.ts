/** The columns of each sheet: all in one row, or titrations and batches apart. */
import { batchColumns } from "./batch-columns";
import { column, type Column } from "./columns";
import type { Habit } from "./habit";
import { titrationColumns } from "./titration-columns";

export function sheetColumns(habit: Habit): (readonly Column[])[] {
  const date = column("date", "Date", "date");
  const lot = column("lot", "Lot", "lot");
  const batch = column("batch", "Batch", "batch");
  if (habit.sheets === 1)
    return [[date, batch, lot, ...titrationColumns(habit), ...batchColumns(habit)]];
  const copied = habit.copiesAcid
    ? titrationColumns(habit).filter(({ key }) => key === (habit.hasFfa ? "ffa" : "acidValue"))
    : [];
  const density =
    habit.density.place === "column"
      ? titrationColumns(habit).filter(({ key }) => key === "density")
      : [];
  return [
    [date, lot, ...titrationColumns(habit)],
    [date, batch, lot, ...copied, ...density, ...batchColumns(habit)],
  ];
}
