/** One held figure against what it should be: right within its digits, carried over, or a mistake. */
import type { RoleId } from "../recognising/roles";
import { type FormulaFacts, shown } from "./formula-facts";
import type { HeldFigure } from "./held-figure";
import type { Readings } from "./readings";
import { pairsOf, type Slip, slipsFor } from "./slips";
import type { Origin } from "./upstream";
import { fromNothing, type Ways } from "./worked";
import { workedOut, type Written } from "./worked-out";

export type Verdict =
  /** There is nothing to work it out from. */
  | { readonly kind: "not-checked" }
  | { readonly kind: "right"; readonly written: Written; readonly way: Ways }
  /** Wrong, and rightly worked out from a figure of the row that is wrong itself. */
  | { readonly kind: "carried"; readonly written: Written; readonly should: number }
  | {
      readonly kind: "wrong";
      readonly written: Written;
      readonly should: number;
      readonly slip: Slip | undefined;
    };

export interface Checking {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly held: HeldFigure;
  readonly readings: Readings;
  /** What the core says should be there, in the column's unit; undefined when it cannot say. */
  readonly core: number | undefined;
  /** Ways that this logbook goes in most of its rows. */
  readonly habits: Habits;
  /** Held figures that this one may have been worked out from, and how unsure their digits make it. */
  readonly origins: () => readonly Origin[];
  readonly facts: FormulaFacts | undefined;
  /** How a part of a dose may be written down. */
  readonly writtens: readonly Written[];
  /** What was found in this column before: tried first. */
  readonly memory: Memory;
}

/** Ways that are as right as the plain one, where a whole logbook keeps to them. */
export interface Habits {
  readonly strengthAsWeighed: boolean;
  readonly chargeAsWeighed: boolean;
}

/** Keeps a column's mistakes, so that the next row need not try them all. */
export interface Memory {
  last: Slip | undefined;
  pairs: Slip[];
  /** How often two mistakes at once may still be tried. */
  pairTries: number;
}
export const freshMemory = (): Memory => ({ last: undefined, pairs: [], pairTries: 100 });

/** Other constants of the trade (56.11, 282.5, 0.92) and rounding along the way stay within this. */
const conventional = 0.005;
/** Published coefficients for the lye per % FFA differ by up to 2 % (facts of their sources). */
const conventionalAcidDose = 0.02;

function ways({ readings, role, habits }: Checking): Ways[] {
  const { strength, molarity, temperature, amount, held } = readings;
  const isVolume = amount?.unit.measures === "volume";
  const found: Ways[] = [{}];
  if (habits.strengthAsWeighed && strength !== undefined && molarity === undefined) {
    found.push({ strengthAsWeighed: true });
  }
  const isTotal = role === "catalyst" || role === "catalystRate";
  if (habits.chargeAsWeighed && isTotal) found.push({ chargeAsWeighed: true });
  if (temperature !== undefined && isVolume) found.push({ atTemperature: true });
  if (held.has("oilMass") && isVolume) found.push({ litresByAmount: true });
  return found;
}

interface Try {
  readonly value: number;
  readonly doubt: number;
  readonly written: Written;
  readonly way: Ways;
}

/** How far the held figure is off, as a share of what its digits allow: 1 or less is as good as equal. */
function distance(held: HeldFigure, { value, doubt }: Try): number {
  const off = Math.abs(held.value - value);
  const size = Math.abs(value);
  const allowed = held.halfDigit * 1.0000001 + size * (doubt + 1e-9);
  return off / allowed;
}

function* tries(c: Checking, way: Ways, froms: readonly Origin[]): Generator<Try> {
  for (const written of c.writtens) {
    for (const { from, doubt } of froms) {
      const value = workedOut(c.role, c.unit, written, c.readings, way, from);
      if (value !== undefined) yield { value, doubt, written, way };
    }
  }
}

const nothing = [{ from: fromNothing, doubt: 0 }];

function isOff(held: HeldFigure, value: number, allowed: number): boolean {
  return Math.abs(held.value - value) > Math.abs(value) * allowed;
}

interface Match {
  readonly slip: Slip;
  readonly written: Written;
  /** How many of its mistakes the formula shows. */
  readonly evidence: number;
  /** Off by more than the digits of the held figure, in parts of a thousand. */
  readonly off: number;
}

function perThousandOff(held: HeldFigure, value: number): number {
  const beyond = Math.abs(held.value - value) - held.halfDigit;
  return Math.round((1000 * Math.max(0, beyond)) / Math.abs(value));
}

const isBetter = (one: Match, other: Match | undefined): boolean =>
  other === undefined ||
  one.evidence > other.evidence ||
  (one.evidence === other.evidence && one.off < other.off);

/** The slip that gives the held figure: one that the formula shows, one that fits closer, the first. */
function matching(c: Checking, slips: readonly Slip[]): Match | undefined {
  let best: Match | undefined;
  const froms = [...nothing, ...c.origins()];
  for (const slip of slips) {
    const evidence = shown(slip, c.facts);
    for (const each of tries(c, slip.ways, froms)) {
      if (distance(c.held, each) > 1) continue;
      const found = {
        slip,
        written: each.written,
        evidence,
        off: perThousandOff(c.held, each.value),
      };
      if (isBetter(found, best)) best = found;
    }
  }
  return best;
}

function explained(c: Checking): Match | undefined {
  const { memory } = c;
  const known = memory.last && matching(c, [memory.last]);
  if (known && known.evidence === known.slip.ids.length) return known;
  const slips = slipsFor(c.role, c.readings);
  const single = matching(c, slips);
  if (single) {
    memory.last = single.slip;
    return single;
  }
  return undefined;
}

function explainedTwice(c: Checking): Match | undefined {
  const { memory } = c;
  const known = matching(c, memory.pairs);
  if (known || memory.pairTries <= 0) return known;
  memory.pairTries -= 1;
  const pair = matching(c, pairsOf(slipsFor(c.role, c.readings)));
  if (pair) memory.pairs.push(pair.slip);
  return pair;
}

/** How far conventions alone may take a figure: in a dose, its acid part further than the rest. */
function leeway({ role, readings, unit }: Checking): number {
  if (role === "acidDose") return conventionalAcidDose;
  if (role !== "catalyst" && role !== "catalystRate") return conventional;
  const acid = workedOut("acidDose", unit, "weighed", readings, {}, fromNothing);
  const all = workedOut(role, unit, "weighed", readings, {}, fromNothing);
  return acid && all ? conventional + conventionalAcidDose * (acid / all) : conventional;
}

const coreTry = (value: number): Try => ({ value, doubt: 0, written: "weighed", way: {} });

function straightTries(c: Checking): Try[] {
  const all = ways(c).flatMap((way) => [...tries(c, way, nothing)]);
  return c.core === undefined ? all : [coreTry(c.core), ...all];
}

export function checkFigure(c: Checking): Verdict {
  const { held } = c;
  const isAgreed = c.core !== undefined && distance(held, coreTry(c.core)) <= 1;
  if (isAgreed) return { kind: "right", written: "weighed", way: {} };
  const straight = straightTries(c);
  const [first] = straight;
  if (!first) return { kind: "not-checked" };
  const right = straight.find((each) => distance(held, each) <= 1);
  if (right) return { kind: "right", written: right.written, way: right.way };
  const follows = ways(c).flatMap((way) => [...tries(c, way, c.origins())]);
  const followed = follows.find((each) => distance(held, each) <= 1);
  const isNear = (each: Try): boolean => !isOff(held, each.value, conventional);
  if (followed && straight.some(isNear))
    return { kind: "right", written: followed.written, way: followed.way };
  if (followed) return { kind: "carried", written: followed.written, should: first.value };
  const single = explained(c);
  if (single)
    return { kind: "wrong", written: single.written, should: first.value, slip: single.slip };
  const near = leeway(c);
  const conventionally = straight.find((each) => !isOff(held, each.value, near));
  if (conventionally) {
    return { kind: "right", written: conventionally.written, way: conventionally.way };
  }
  const nearly = follows.find((each) => !isOff(held, each.value, near));
  if (nearly) return { kind: "carried", written: nearly.written, should: first.value };
  const double = explainedTwice(c);
  return {
    kind: "wrong",
    written: double?.written ?? first.written,
    should: first.value,
    slip: double?.slip,
  };
}
