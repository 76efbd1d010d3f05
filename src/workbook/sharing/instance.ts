/** A formula of the file that is to be written in plain functions, and how its parts come out. */
import type { Template } from "./template";

/** Where a formula stands. */
export interface Home {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** How a reader finds it: Log!C2, the name doseToday. */
  readonly shown: string;
  /** It is used from many cells, so that nothing in it may move with the cell. */
  readonly isFixed: boolean;
}

/** The row of the added sheet that a formula's helper cells stand in, and the first rows of its blocks. */
export interface Room {
  readonly row: number;
  readonly blocks: readonly number[];
}

export interface Instance {
  readonly template: Template;
  readonly pieces: readonly string[];
  readonly home: Home;
  room: Room;
}

/** Written in its own cell, or on the added sheet, where it must say which sheet it means. */
export type Mode = "here" | "workings";

/** A part of a formula that is not the same in all the cells it was filled into. */
export type Operand = (instance: Instance, mode: Mode) => string;
