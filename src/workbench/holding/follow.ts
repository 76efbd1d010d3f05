/** Following what reads a cell, and what reads that. */
import { keyAt, placeAt } from "./cell-keys";
import { type Asked, type At, type Marks, put, readersOf } from "./marks";
import type { ReadBlock } from "./readers";
import type { Reason } from "./reasons";

interface Held {
  /** Every formula of the workbook. */
  readonly asked: readonly Asked[];
  /** Cells that are held whatever formulas there are, and why. */
  readonly stuck: ReadonlyMap<string, ReadonlyMap<number, string>>;
  ownReason(asked: Asked): string | undefined;
  /** The cells a formula answers over, where there are more than one. */
  areaOf(at: At): ReadBlock | undefined;
}

/** All that is held: for itself, as part of an answer, or for what it reads. */
export function heldCells({ asked, stuck, ownReason, areaOf }: Held): Marks<Reason> {
  const held: Marks<Reason> = new Map();
  const waiting: { sheet: string; key: number }[] = [];
  const note = (sheet: string, key: number, reason: Reason): boolean => {
    if (held.get(sheet)?.has(key)) return false;
    put(held, sheet, key, reason);
    waiting.push({ sheet, key });
    return true;
  };
  const hold = (at: At, reason: Reason): void => {
    const { sheet } = at;
    const key = keyAt(at.row, at.column);
    if (!note(sheet, key, reason)) return;
    const area = areaOf(at);
    if (!area) return;
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) {
        note(sheet, keyAt(row, column), { kind: "part", sheet, key });
      }
    }
  };
  for (const [sheet, cells] of stuck) {
    for (const [key, says] of cells) note(sheet, key, { kind: "own", says });
  }
  for (const each of asked) {
    const says = ownReason(each);
    if (says !== undefined) hold(each, { kind: "own", says });
  }
  const readers = readersOf(waiting.length > 0 ? asked : [], (each) => each.reads);
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { sheet, key } = next;
    const { row, column } = placeAt(key);
    for (const each of readers.take(sheet, row, column)) {
      hold(each, { kind: "reads", sheet, key });
    }
  }
  return held;
}

/** The cells of formulas that read one of these, by whatever way. */
export function reading(
  asked: readonly Asked[],
  from: readonly At[],
  reads: (each: Asked) => readonly ReadBlock[],
): Marks<true> {
  const found: Marks<true> = new Map();
  const readers = readersOf(from.length === 0 ? [] : asked, reads);
  const waiting = [...from];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    for (const each of readers.take(next.sheet, next.row, next.column)) {
      const key = keyAt(each.row, each.column);
      if (found.get(each.sheet)?.has(key)) continue;
      put(found, each.sheet, key, true);
      waiting.push(each);
    }
  }
  return found;
}
