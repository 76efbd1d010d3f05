/** The ways in which a figure may have come about, and how near each comes to it. */
import type { Checking } from "./checking";
import type { HeldFigure } from "./held-figure";
import type { Origin } from "./upstream";
import type { Ways } from "./ways";
import { fromNothing } from "./worked";
import { workedOut, type Written } from "./worked-out";

export function ways({ readings, role, habits }: Checking): Ways[] {
  const { strength, molarity, temperature, amount, held } = readings;
  const isVolume = amount?.unit.measures === "volume";
  const found: Ways[] = [{}];
  const isByStrength = strength !== undefined && molarity === undefined;
  // What somebody said needs no habit to show it.
  if (habits.strengthAsWeighed && isByStrength && !readings.strengthBasis) {
    found.push({ strengthAsWeighed: true });
  }
  const isReported = role === "acidValue" || role === "ffa";
  if (isReported && isByStrength && readings.strengthAssay < 100) {
    found.push({ strengthAsPure: true });
  }
  const isTotal = role === "catalyst" || role === "catalystRate";
  if (habits.chargeAsWeighed && isTotal && !readings.charge?.basis)
    found.push({ chargeAsWeighed: true });
  if (temperature !== undefined && isVolume) found.push({ atTemperature: true });
  if (held.has("oilMass") && isVolume) found.push({ litresByAmount: true });
  return found;
}

export interface Try {
  readonly value: number;
  readonly doubt: number;
  readonly written: Written;
  readonly way: Ways;
}

/** How far the held figure is off, as a share of what its digits allow: 1 or less is as good as equal. */
export function distance(held: HeldFigure, { value, doubt }: Try): number {
  const off = Math.abs(held.value - value);
  const size = Math.abs(value);
  const allowed = held.halfDigit * 1.0000001 + size * (doubt + 1e-9);
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

export function isOff(held: HeldFigure, value: number, allowed: number): boolean {
  return Math.abs(held.value - value) > Math.abs(value) * allowed;
}

export const coreTry = (value: number): Try => ({ value, doubt: 0, written: "weighed", way: {} });

export function straightTries(c: Checking): Try[] {
  const all = ways(c).flatMap((way) => [...tries(c, way, nothing)]);
  return c.core === undefined ? all : [coreTry(c.core), ...all];
}
