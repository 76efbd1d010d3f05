/** What a slip gives, from wherever a working may start, and which slip of several it is. */
import type { Checking } from "./checking";
import type { HeldFigure } from "../reading/held-figure";
import { mistakeOf } from "../mistakes/all";
import { causeOf, keyOf, shown, type Slip } from "./slips";
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
  /** Other causes that give the figure to its digits, with as much to say for them. */
  readonly orElse: readonly Slip[];
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
export interface Worked extends Try {
  readonly slip: Slip;
  readonly isFromAcidValue: boolean;
}

/** Nothing tells them apart. */
const isAsGood = (one: Match, other: Match): boolean =>
  !isBetter(one, other) && !isBetter(other, one);

/** Of each cause one, and not the one that is named first. */
function othersThan(first: Match, all: readonly Match[]): Slip[] {
  if (first.off > 0) return [];
  const others = new Map(
    all.filter((each) => isAsGood(each, first)).map(({ slip }) => [causeOf(slip), slip] as const),
  );
  others.delete(causeOf(first.slip));
  return [...others.values()];
}

/** The slip that gives the held figure: one that the formula shows, one that fits closer, the column's usual one,
 * the first. */
export function best(c: Checking, worked: readonly Worked[], allowed = 0): Match | undefined {
  let found: Match | undefined;
  const all: Match[] = [];
  for (const each of worked) {
    if (distance(c.held, each, allowed) > 1) continue;
    const match = {
      slip: each.slip,
      written: each.written,
      evidence: shown(each.slip, c.facts),
      off: perThousandOff(c.held, each.value),
      isUsual: c.usualSlip !== undefined && keyOf(c.usualSlip) === keyOf(each.slip),
      isFromAcidValue: each.isFromAcidValue,
      orElse: [],
    };
    all.push(match);
    if (isBetter(match, found)) found = match;
  }
  return found && { ...found, orElse: othersThan(found, all) };
}

/** Where a working may start, and in which way of weighing a part is written. */
export interface Start {
  readonly written: Written;
  readonly origin: Origin;
}

export const startsOf = (c: Checking): Start[] =>
  c.writtens.flatMap((written) =>
    [...nothing, ...c.origins()].map((origin) => ({ written, origin })),
  );

/** A figure that was copied is the same to the last digit, or it was not copied. */
export const isCopy = ({ slip }: Pick<Worked, "slip">): boolean =>
  slip.made.some(({ id }) => mistakeOf(id).isCopy === true);

export const workedTo = (
  c: Checking,
  { ways }: Slip,
  { written, origin }: Start,
): number | undefined => expectedFigure(c.role, c.unit, written, c.readings, ways, origin.from);

export const asWorked = (
  c: Checking,
  slip: Slip,
  { written, origin }: Start,
  value: number,
): Worked => ({
  slip,
  value,
  written,
  doubt: isCopy({ slip }) ? 0 : origin.doubt,
  isFromAcidValue: c.role === "ffa" && origin.from.has("acidValue"),
});
