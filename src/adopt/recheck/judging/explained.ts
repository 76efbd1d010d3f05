/** Which mistake gives a wrong figure, or which two. */
import type { Checking } from "./checking";
import type { HeldFigure } from "../reading/held-figure";
import { isContradicted } from "./contradicted";
import { mistakeOf } from "../mistakes/all";
import { idsOf, keyOf, pairableIn, shown, type Slip, slipsFor, waysTogether } from "./slips";
import { distance, nothing, type Try } from "./tries";
import type { Origin } from "../arithmetic/upstream";
import { expectedFigure, type Written } from "../arithmetic/expected-figure";

export interface Match {
  readonly slip: Slip;
  readonly written: Written;
  /** How many of its mistakes the formula shows. */
  readonly evidence: number;
  /** Off by more than the digits of the held figure, in parts of a thousand. */
  readonly off: number;
  /** The column's commonest mistake. */
  readonly isUsual: boolean;
  /** A % FFA that starts from the acid value held beside it, as most do. */
  readonly isFromAcidValue: boolean;
}

function perThousandOff(held: HeldFigure, value: number): number {
  const beyond = Math.abs(held.value - value) - held.halfDigit;
  return Math.round((1000 * Math.max(0, beyond)) / Math.abs(value));
}

const isBetter = (one: Match, other: Match | undefined): boolean =>
  other === undefined ||
  one.evidence > other.evidence ||
  (one.evidence === other.evidence && one.off < other.off) ||
  (one.evidence === other.evidence &&
    one.off === other.off &&
    (one.isUsual === other.isUsual ? one.isFromAcidValue && !other.isFromAcidValue : one.isUsual));

/** What a slip gives, from one start or another. */
interface Worked extends Try {
  readonly slip: Slip;
  readonly isFromAcidValue: boolean;
}

/** The slip that gives the held figure: one that the formula shows, one that fits closer, the column's usual one,
 * the first. */
function best(c: Checking, worked: readonly Worked[], allowed = 0): Match | undefined {
  let found: Match | undefined;
  for (const each of worked) {
    if (distance(c.held, each, allowed) > 1) continue;
    const match = {
      slip: each.slip,
      written: each.written,
      evidence: shown(each.slip, c.facts),
      off: perThousandOff(c.held, each.value),
      isUsual: c.usualSlip !== undefined && keyOf(c.usualSlip) === keyOf(each.slip),
      isFromAcidValue: each.isFromAcidValue,
    };
    if (isBetter(match, found)) found = match;
  }
  return found;
}

/** Where a working may start, and in which way of weighing a part is written. */
interface Start {
  readonly written: Written;
  readonly origin: Origin;
}

const startsOf = (c: Checking): Start[] =>
  c.writtens.flatMap((written) =>
    [...nothing, ...c.origins()].map((origin) => ({ written, origin })),
  );

/** A figure that was copied is the same to the last digit, or it was not copied. */
const isCopy = ({ slip }: Pick<Worked, "slip">): boolean =>
  slip.made.some(({ id }) => mistakeOf(id).isCopy === true);

const workedTo = (c: Checking, { ways }: Slip, { written, origin }: Start): number | undefined =>
  expectedFigure(c.role, c.unit, written, c.readings, ways, origin.from);

const asWorked = (c: Checking, slip: Slip, { written, origin }: Start, value: number): Worked => ({
  slip,
  value,
  written,
  doubt: isCopy({ slip }) ? 0 : origin.doubt,
  isFromAcidValue: c.role === "ffa" && origin.from.has("acidValue"),
});

/** Other constants of the trade and rounding along the way are no second mistake. */
const conventional = 0.004;

/** Those that come near the held figure; whether a right cell speaks against them is asked of these alone. */
function all(c: Checking, slips: readonly Slip[]): Worked[] {
  const found: Worked[] = [];
  if (slips.length === 0) return found;
  const starts = startsOf(c);
  for (const slip of slips) {
    for (const start of starts) {
      const value = workedTo(c, slip, start);
      if (value === undefined) continue;
      const each = asWorked(c, slip, start, value);
      const isNear = distance(c.held, each, conventional) <= 1;
      if (isNear && !isContradicted(c, slip, start.origin.from)) found.push(each);
    }
  }
  return found;
}

/** The one mistake that gives the figure: within its digits, else nearly. */
export function explained(c: Checking): Match | undefined {
  const found = all(c, slipsFor(c.role, c.readings));
  return (
    best(c, found) ??
    best(
      c,
      found.filter((each) => !isCopy(each)),
      conventional,
    )
  );
}

/** The parts are right and their sum is not: no other cause is looked for. */
export function addedWrongly({ role, held, right, writtens }: Checking): Match | undefined {
  const parts = right.filter((each) => each.role === "acidDose" || each.role === "reactionDose");
  if (parts.length < 2 || (role !== "catalyst" && role !== "catalystRate")) return undefined;
  const ways = { result: () => held.value };
  const slip: Slip = { made: [{ id: "slip-of-addition", ways }], ways };
  return {
    slip,
    written: writtens[0] ?? "weighed",
    evidence: 0,
    off: 0,
    isUsual: false,
    isFromAcidValue: false,
  };
}

/** So many ways of working are tried for a pair of mistakes in one figure, whatever was tried for others. */
export const mostTries = 3_000;

/** Each pair is made once, and only when it is looked at. */
function pairing(slips: readonly Slip[]): (one: number, other: number) => Slip | undefined {
  const made = new Map<number, Slip | undefined>();
  const pair = (one: Slip, other: Slip): Slip | undefined => {
    const ways = waysTogether(one, other);
    return ways && { made: [...one.made, ...other.made], ways };
  };
  return (one, other) => {
    const key = one * slips.length + other;
    if (!made.has(key)) made.set(key, pair(slips[one] as Slip, slips[other] as Slip));
    return made.get(key);
  };
}

const none: Slip = { made: [], ways: {} };

/** Slips that do something from a start, by their places, and that no right cell speaks against. */
function livingAt(c: Checking, slips: readonly Slip[], start: Start): number[] {
  const right = workedTo(c, none, start);
  if (right === undefined) return [];
  return slips.flatMap((slip, at) => {
    const value = workedTo(c, slip, start);
    const isLiving = value !== undefined && Math.abs(value - right) > 1e-12 * Math.abs(right);
    return isLiving && !isContradicted(c, slip, start.origin.from) ? [at] : [];
  });
}

/** The two mistakes that give it together. From a start at which a slip does nothing it is no half of a pair. */
export function explainedTwice(c: Checking): {
  readonly match: Match | undefined;
  readonly isCutShort?: true;
} {
  const slips = slipsFor(c.role, c.readings).filter(pairableIn(c.role));
  const pairOf = pairing(slips);
  const pairs: Worked[] = [];
  let tried = 0;
  for (const start of startsOf(c)) {
    const living = livingAt(c, slips, start);
    for (const [at, one] of living.entries()) {
      for (const other of living.slice(at + 1)) {
        const pair = pairOf(one, other);
        if (!pair) continue;
        if ((tried += 1) > mostTries) return { match: best(c, pairs), isCutShort: true };
        const value = workedTo(c, pair, start);
        if (value === undefined) continue;
        const found = asWorked(c, pair, start, value);
        if (distance(c.held, found) > 1) continue;
        if (!isContradicted(c, pair, start.origin.from)) pairs.push(found);
      }
    }
  }
  return { match: best(c, pairs) };
}

/** A mistake that gives the figure and that the formula itself shows. */
export function shownByFormula(c: Checking): Match | undefined {
  const { facts } = c;
  if (!facts) return undefined;
  const slips = slipsFor(c.role, c.readings).filter(
    (slip) => shown(slip, facts) === slip.made.length,
  );
  return best(c, all(c, slips));
}

/** A mistake so small that other constants would do as much: it gives the figure to its digits. */
export const smallMistake = (c: Checking): Match | undefined =>
  best(
    c,
    all(
      c,
      slipsFor(c.role, c.readings).filter((slip) =>
        idsOf(slip).every((id) => mistakeOf(id).isSmall === true),
      ),
    ),
  );
