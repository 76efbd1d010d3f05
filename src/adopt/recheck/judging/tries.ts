/** The ways in which a figure may have come about, and how near each comes to it. */
import type { Checking } from "./checking";
import type { HeldFigure } from "../reading/held-figure";
import type { Origin } from "../arithmetic/upstream";
import type { Ways } from "../arithmetic/ways";
import { fromNothing } from "../arithmetic/row-arithmetic";
import { expectedFigure, type Written } from "../arithmetic/expected-figure";

const right: Ways = {};
const rightWays: readonly Ways[] = [right];
const rightTwice: readonly Ways[] = [right, { litresByAmount: true }];

/** Right ways; conventions are no ways, but readings of the row (conventions.ts). */
export function ways({ readings: { amount, held } }: Checking): readonly Ways[] {
  return held.has("oilMass") && amount?.unit.measures === "volume" ? rightTwice : rightWays;
}

export interface Try {
  readonly value: number;
  readonly doubt: number;
  readonly written: Written;
}

/** How far the held figure is off, as a share of what its digits allow: 1 or less is as good as equal.
 * @param more allowed besides, as a share of the value */
export function distance(held: HeldFigure, { value, doubt }: Try, more = 0): number {
  const off = Math.abs(held.value - value);
  const allowed = held.halfDigit * 1.0000001 + Math.abs(value) * (doubt + more + 1e-9);
  return off / allowed;
}

export function tries(c: Checking, way: Ways, froms: readonly Origin[]): Try[] {
  const found: Try[] = [];
  for (const written of c.writtens) {
    for (const { from, doubt } of froms) {
      const value = expectedFigure(c.role, c.unit, written, c.readings, way, from);
      if (value !== undefined) found.push({ value, doubt, written });
    }
  }
  return found;
}

export const nothing: readonly Origin[] = [{ from: fromNothing, doubt: 0 }];

export const straightTries = (c: Checking): Try[] =>
  ways(c).flatMap((way) => tries(c, way, nothing));
