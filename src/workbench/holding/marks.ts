/** Cells of a workbook with something noted of each; sheets by the grid's own names of them. */
import { type ReadBlock, Readers } from "./readers";

export interface At {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A formula of the grid, and what its engine found it to read. */
export interface Asked extends At {
  readonly formula: string;
  readonly reads: readonly ReadBlock[];
  /** Why it is held for itself. */
  readonly held: string | undefined;
}

/** A formula that must be held, found by comparing it with its file. */
export interface HeldPlace {
  readonly sheet: string;
  readonly key: number;
  readonly formula: string;
}

/** By sheet, then by the key of the cell. */
export type Marks<T> = Map<string, Map<number, T>>;

export function put<T>(marks: Marks<T>, sheet: string, key: number, value: T): void {
  let found = marks.get(sheet);
  if (!found) marks.set(sheet, (found = new Map<number, T>()));
  found.set(key, value);
}

/** Every cell with what is noted of it. */
export function* each<T>(marks: Marks<T>): Generator<{ sheet: string; key: number; reason: T }> {
  for (const [sheet, cells] of marks) {
    for (const [key, reason] of cells) yield { sheet, key, reason };
  }
}

export function readersOf(
  asked: readonly Asked[],
  reads: (each: Asked) => readonly ReadBlock[],
): Readers<Asked> {
  const readers = new Readers<Asked>();
  for (const each of asked) for (const block of reads(each)) readers.note(block, each);
  return readers;
}
