/** A whole logbook of one habit, with a mistake in some of its rows, and the truth about each row. */
import type { SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import { givens, type Given } from "./besides";
import { chanceOf, type Chance } from "./chance";
import type { Column, Key } from "./columns";
import { extras, subtotal } from "./extras";
import { number } from "./expression";
import { Grid } from "./grid";
import { type Habit, habitOf } from "./habit";
import { type Planted, plantable } from "./mistakes";
import { type Day, dayOf } from "./readings";
import { sheetColumns } from "./sheet-columns";
import { type GivenKey, rowSheet, type Sheet, type Written } from "./sheet";
import { workBatch } from "./work-batch";
import { type Acid, workTitration } from "./work-titration";

export interface RowTruth {
  /** By sheet: the row that holds the titration, and the one that holds the batch. From 0. */
  readonly titrationRow: number;
  readonly batchRow: number;
  readonly mistake: Planted | undefined;
  /** The mistake was made in the titration. */
  readonly isOfTitration: boolean;
  /** g of lye as weighed: what the row ends in, and what it should have ended in. */
  readonly lye: number;
  readonly right: number;
  /** By how much the figure that is furthest off is off, as a share of itself. */
  readonly off: number;
}

export interface MadeLogbook {
  readonly seed: number;
  /** Whether grams of lye are pure or as weighed, the maker leaves open. */
  readonly leavesOpen: boolean;
  readonly habit: Habit;
  readonly sheets: readonly {
    readonly cells: SheetCells;
    readonly headingRow: number;
    readonly lastRow: number;
    readonly columns: readonly Column[];
  }[];
  readonly asked: readonly Given[];
  readonly rows: readonly RowTruth[];
}

const ofTitration = new Set<Planted>([
  "blank not subtracted",
  "blank twice",
  "blank added",
  "1 mL as 1 g",
  "slip by ten",
  "mean of wrong titres",
  "one titre left out",
  "acid value as percent",
  "percent as molarity",
]);

interface Filled {
  readonly cells: readonly Map<Key, Written>[];
  readonly lye: number;
  readonly acid: Acid;
}

interface Making {
  readonly habit: Habit;
  readonly columns: readonly (readonly Column[])[];
  readonly besides: readonly ReadonlyMap<GivenKey, string>[];
}

/** Half of each lot. */
function mixed(one: Acid, other: Acid): Acid {
  const half = (a: Acid["ffa"], b: Acid["ffa"]) => a && b && number((a.value + b.value) / 2);
  return {
    ...one,
    acidValue: half(one.acidValue, other.acidValue),
    ffa: half(one.ffa, other.ffa),
  };
}

/** @param row undefined: worked out without writing anything down */
function fill(
  { habit, columns, besides }: Making,
  day: Day,
  row: number | undefined,
  mistake: Planted | undefined,
  other: { day: Day; acid: Acid | undefined; grams: number },
  /** The other lot that goes into the batch. */
  blend?: Acid,
): Filled {
  const cells = columns.map(() => new Map<Key, Written>());
  const sheetAt = (at: number): Sheet =>
    rowSheet(habit, columns[at] ?? [], row, besides[at] ?? new Map(), cells[at] ?? new Map());
  const first = sheetAt(0);
  const acid = workTitration(habit, day, first, mistake, other.day);
  if (columns.length === 1)
    return { cells, acid, lye: workBatch(habit, day, acid, first, mistake, other.grams) };
  const second = sheetAt(1);
  const own = blend ? mixed(acid, blend) : acid;
  const taken = mistake === "another lot's acid" ? (other.acid ?? acid) : own;
  const plain = (of: Acid["ffa"]) => of && number(of.value);
  const scale = habit.ffaIn === "%" ? 1 : 100;
  const copied: Acid = {
    ...taken,
    ffa:
      row !== undefined && habit.copiesAcid && habit.hasFfa && taken.ffa
        ? second.putScaled("ffa", number(taken.ffa.value), scale)
        : plain(taken.ffa),
    acidValue:
      row !== undefined && habit.copiesAcid && !habit.hasFfa && taken.acidValue
        ? second.put("acidValue", number(taken.acidValue.value))
        : plain(taken.acidValue),
  };
  return { cells, acid, lye: workBatch(habit, day, copied, second, mistake, other.grams) };
}

/** The largest difference, as a share, between what two fillings of a row hold. */
function furthestOff(one: Filled, other: Filled): number {
  let most = 0;
  one.cells.forEach((cells, at) => {
    cells.forEach(({ value }, key) => {
      const right = other.cells[at]?.get(key)?.value;
      if (typeof value === "number" && typeof right === "number" && right !== 0)
        most = Math.max(most, Math.abs(value / right - 1));
    });
  });
  return most;
}

export interface Order {
  readonly rows: number;
  /** The share of rows in which a mistake is planted. */
  readonly mistakes: number;
  /** Every maker leaves open whether grams of lye are pure; otherwise one in three. */
  readonly leavesOpen?: true;
}

const words = (habit: Habit, chance: Chance, day: Day): ReadonlyMap<Key, string | number> =>
  new Map<Key, string | number>([
    ["date", day.date],
    ["lot", day.lot],
    ["batch", day.batch],
    ["titrantBase", habit.titrant.base],
    ["base", habit.base],
    ["unit", habit.oilUnit],
    ["note", chance.of(["", "", "a bit dark", "smells fine", "settled 2 days"])],
    ...(habit.blank === "word" ? [["blank", "neutralised"] as const] : []),
    ...(habit.blank === "zero" ? [["blank", 0] as const] : []),
  ]);

export function makeLogbook(seed: number, order: Order): MadeLogbook {
  const chance = chanceOf(seed);
  const habit = habitOf(chance);
  const columns = sheetColumns(habit);
  const blank = chance.between(0.08, 0.3, 2);
  const all = givens(habit, blank);
  const besidesHere = all.filter(({ place }) => place === "beside");
  const besides = columns.map(
    () =>
      new Map<GivenKey, string>(besidesHere.map(({ key }, at) => [key, `$B$${String(at + 2)}`])),
  );
  const headingRow = besidesHere.length === 0 ? 1 : besidesHere.length + 2;
  const grids = columns.map(() => new Grid());
  grids.forEach((grid, at) => {
    grid.put(0, 0, at === 0 ? "Saltmarsh Ferries oil log" : "Batches");
    besidesHere.forEach(({ label, value, format }, line) => {
      grid.put(line + 1, 0, label);
      grid.put(line + 1, 1, value, "", format);
    });
    (columns[at] ?? []).forEach(({ heading }, column) => {
      grid.put(headingRow, column, heading);
    });
  });
  const making: Making = { habit, columns, besides };
  const kinds = plantable(habit);
  // nothing stands above the first row that could be copied
  const kindsAtFirst = kinds.filter((each) => each !== "stale copied dose");
  const days: Day[] = [];
  for (let at = 0; at < order.rows; at += 1) {
    const day = dayOf(chance, habit, at, blank);
    const last = days[at - 1];
    const isShared = habit.blank === "once a day" && last?.date === day.date;
    days.push(isShared ? { ...day, blanks: last.blanks } : day);
  }
  const rows: RowTruth[] = [];
  let before: { day: Day; acid: Acid | undefined; grams: number } = {
    day: days[1] as Day,
    acid: undefined,
    grams: 777,
  };
  const every = 7;
  const isSubtotalled = habit.extras.subtotals;
  days.forEach((day, at) => {
    const row = headingRow + 1 + at + (isSubtotalled ? Math.floor(at / every) : 0);
    if (isSubtotalled && at > 0 && at % every === 0)
      grids.forEach((grid, sheet) => {
        subtotal(grid, habit, chance, columns[sheet] ?? [], row - 1, every);
      });
    const mistake = chance.yes(order.mistakes)
      ? chance.of(at === 0 ? kindsAtFirst : kinds)
      : undefined;
    const isBlend = !mistake && habit.blends && habit.copiesAcid && chance.yes(0.15);
    const blend = columns.length === 2 && isBlend ? before.acid : undefined;
    const plain = fill(making, day, row, undefined, before, blend);
    const filled = mistake ? fill(making, day, row, mistake, before) : plain;
    const right = fill(making, day, undefined, undefined, before, blend).lye;
    const said = words(habit, chance, day);
    const isSameDay = days[at - 1]?.date === day.date;
    const isUndated = habit.days.isSometimesMissing && isSameDay && chance.yes(0.5);
    filled.cells.forEach((cells, sheet) => {
      (columns[sheet] ?? []).forEach(({ key, format }, column) => {
        const held = cells.get(key);
        const word = said.get(key);
        if (key === "blank" && habit.blank === "once a day" && isSameDay) return;
        if (key === "date") {
          if (!isUndated) grids[sheet]?.put(row, column, day.date, "", "dd/mm/yyyy");
        } else if (key === "temperature") grids[sheet]?.put(row, column, day.temperature);
        else if (key === "lot" && sheet === 1 && blend)
          grids[sheet]?.put(row, column, `${days[at - 1]?.lot ?? ""} + ${day.lot}`);
        else if (word !== undefined) grids[sheet]?.put(row, column, word);
        else if (held)
          grids[sheet]?.put(
            row,
            column,
            held.value,
            held.formula,
            key === "ffa" || key === "charge" || held.formula !== "" ? format : "General",
          );
      });
    });
    const off = furthestOff(filled, plain);
    rows.push({
      titrationRow: row,
      batchRow: row,
      mistake,
      isOfTitration: mistake !== undefined && ofTitration.has(mistake),
      lye: filled.lye,
      right,
      off,
    });
    before = { day, acid: filled.acid, grams: filled.lye };
  });
  const lastRow =
    headingRow + order.rows + (isSubtotalled ? Math.floor((order.rows - 1) / every) : 0);
  grids.forEach((grid, at) => {
    const own = rows.map(({ batchRow }) => batchRow);
    extras(grid, habit, chance, columns[at] ?? [], headingRow, lastRow, own);
  });
  return {
    seed,
    leavesOpen: order.leavesOpen ?? seed % 3 === 0,
    habit,
    sheets: grids.map((grid, at) => ({
      cells: grid.cells(at === 0 ? "Log" : "Batches"),
      headingRow,
      lastRow,
      columns: columns[at] ?? [],
    })),
    asked: all.filter(({ place }) => place !== "heading" && place !== "nowhere"),
    rows,
  };
}
