/** The ways in which a figure may have come about, and how near each comes to it. */
import type { Checking } from "./checking";
import type { HeldFigure } from "./held-figure";
import type { Origin } from "./upstream";
import type { Ways } from "./ways";
import { fromNothing } from "./worked";
import { workedOut, type Written } from "./worked-out";

/** Right ways; conventions are no ways, but readings of the row (conventions.ts). */
export function ways({ readings: { amount, held } }: Checking): Ways[] {
  const isBoth = held.has("oilMass") && amount?.unit.measures === "volume";
  return isBoth ? [{}, { litresByAmount: true }] : [{}];
}

export interface Try {
  readonly value: number;
  readonly doubt: number;
  readonly written: Written;
  readonly way: Ways;
}

/** How far the held figure is off, as a share of what its digits allow: 1 or less is as good as equal.
 * @param more allowed besides, as a share of the value */
export function distance(held: HeldFigure, { value, doubt }: Try, more = 0): number {
  const off = Math.abs(held.value - value);
  const size = Math.abs(value);
  const allowed = held.halfDigit * 1.0000001 + size * (doubt + more + 1e-9);
  return off / allowed;
}

export function* tries(c: Checking, way: Ways, froms: readonly Origin[]): Generator<Try> {
  for (const written of c.writtens) {
    for (const { from, doubt } of froms) {
      const value = workedOut(c.role, c.unit, written, c.readings, way, from);
      if (value !== undefined) yield { value, doubt, written, way };
    }
  }
}

export const nothing = [{ from: fromNothing, doubt: 0 }];

export const coreTry = (value: number): Try => ({ value, doubt: 0, written: "weighed", way: {} });

export function straightTries(c: Checking): Try[] {
  const all = ways(c).flatMap((way) => [...tries(c, way, nothing)]);
  return c.core === undefined ? all : [coreTry(c.core), ...all];
}
