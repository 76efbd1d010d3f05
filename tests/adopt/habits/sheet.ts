/** One row being filled in: what is put into a cell comes back as that cell, rounded if the maker rounds. */
import { cellName } from "./cell-names";
import type { Column, Key } from "./columns";
import { cell, number, over, times, type Worked } from "./expression";
import type { Habit } from "./habit";

export type GivenKey =
  | "strength"
  | "sample"
  | "density"
  | "oil density"
  | "assay"
  | "charge"
  | "blank"
  | "base"
  | "titrantBase";

export interface Written {
  readonly value: string | number;
  readonly formula: string;
}

export interface Sheet {
  /** A reading, typed. */
  read(key: Key, value: number): Worked;
  /** Something that holds for all rows or stands in a column. */
  given(key: GivenKey, value: number): Worked;
  /** Something worked out. */
  put(key: Key, worked: Worked): Worked;
  /** The cell holds it divided by a scale; it comes back in the scale in which it was given. */
  putScaled(key: Key, worked: Worked, scale: number): Worked;
  rounded(key: Key, value: number): number;
}

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

/** @param row undefined: nothing is written down and nothing rounded: the right figure. */
export function rowSheet(
  habit: Habit,
  columns: readonly Column[],
  row: number | undefined,
  besides: ReadonlyMap<GivenKey, string>,
  cells: Map<Key, Written>,
): Sheet {
  const find = (key: Key): { column: Column; name: string } | undefined => {
    const at = columns.findIndex((each) => each.key === key);
    const column = columns[at];
    return column && row !== undefined ? { column, name: cellName(row, at) } : undefined;
  };
  const isFormula = habit.cells === "formulas";
  function put(key: Key, worked: Worked): Worked {
    const place = find(key);
    if (!place) return worked;
    const shown = isFormula ? worked.value : round(worked.value, place.column.digits);
    // A bare figure is typed, in a sheet of formulas too.
    const isTyped = !isFormula || /^[\d.]+$/.test(worked.text);
    cells.set(key, {
      value: isTyped ? round(shown, place.column.digits) : shown,
      formula: isTyped ? "" : `=${worked.text}`,
    });
    return cell(
      place.name,
      habit.roundsOnTheWay || isFormula ? (cells.get(key)?.value as number) : worked.value,
    );
  }
  return {
    read(key, value) {
      const place = find(key);
      if (!place) return number(value);
      cells.set(key, { value, formula: "" });
      return cell(place.name, value);
    },
    given(key, value) {
      const place = find(key as Key);
      if (place) {
        cells.set(key as Key, { value, formula: "" });
        return cell(place.name, value);
      }
      const beside = row === undefined ? undefined : besides.get(key);
      return beside === undefined ? number(value) : cell(beside, value);
    },
    put,
    putScaled(key, worked, scale) {
      if (scale === 1 || !find(key)) return put(key, worked);
      return times(put(key, over(worked, number(scale))), number(scale));
    },
    rounded: (key, value) => round(value, find(key)?.column.digits ?? 9),
  };
}
