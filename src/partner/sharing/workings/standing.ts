/** Where a formula of the file stands, and the parts of it that come out as its place asks. */
import { named } from "../../../xlsx/cell-address";

/** Where a formula stands. */
export interface Home {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** How a reader finds what is not a cell: the name doseToday. */
  readonly label?: string;
  /** It is used from many cells, so that nothing in it may move with the cell. */
  readonly isFixed: boolean;
}

/** How a formula is named in a report: Log!C2. */
export const shownHome = ({ label, sheet, row, column }: Home): string =>
  label ?? named(sheet, row, column);

/** Where the helper cells of a formula stand on the added sheet. */
export interface Room {
  /** The first of their rows. */
  readonly row: number;
  /**
   * The rows of all formulas of the same column, first and last, where each says which row it is for.
   * Sorting may part a formula from its helper cells: then they are looked up.
   */
  readonly siblings: readonly [number, number] | undefined;
}

/** What a part of a formula goes by. */
export interface Standing {
  /** The texts that are its own in a form that other cells have too. */
  readonly pieces: readonly string[];
  readonly home: Home;
  room: Room;
}

/** Written in its own cell, or on the added sheet, where it must say which sheet it means. */
export type Mode = "here" | "workings";

/** A part of a formula that is not the same in all the cells it was filled into. */
export type Operand = (standing: Standing, mode: Mode) => string;
