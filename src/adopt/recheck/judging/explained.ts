/** Which mistake gives a wrong figure. */
import type { Checking } from "./checking";
import { isContradicted } from "./contradicted";
import { mistakeOf } from "../mistakes/all";
import { asWorked, best, isCopy, type Match, startsOf, type Worked, workedTo } from "./match";
import { idsOf, shown, type Slip, slipsFor } from "./slips";
import { distance, straightTries } from "./tries";

/** Other constants of the trade and rounding along the way are no second mistake. */
const conventional = 0.004;
/** Off by so many times, a figure is hardly one mistake's by chance: a part that grew a hundredfold carries what its
 * coefficient or its rounded % FFA does as well. */
const farOff = 8;
const allowedFarOff = 0.02;
/** From 0.9 to 0.93 kg/L, as oils are. */
const densitiesApart = 0.018;

function allowedIn(c: Checking): number {
  const [right] = straightTries(c);
  const times = right ? Math.abs(c.held.value / right.value) : 1;
  return times > farOff || times < 1 / farOff ? allowedFarOff : conventional;
}

/** Those that come near the held figure; whether a right cell speaks against them is asked of these alone. */
function all(c: Checking, slips: readonly Slip[], allowed = conventional): Worked[] {
  const found: Worked[] = [];
  if (slips.length === 0) return found;
  const starts = startsOf(c);
  for (const slip of slips) {
    for (const start of starts) {
      const value = workedTo(c, slip, start);
      if (value === undefined) continue;
      const each = asWorked(c, slip, start, value);
      const isNear = distance(c.held, each, allowed) <= 1;
      if (isNear && !isContradicted(c, slip, start.origin.from)) found.push(each);
    }
  }
  return found;
}

/** What is counted in cups tells few mistakes apart: of several that fit, none is named. */
const isOpen = (c: Checking, found: readonly Worked[]): boolean =>
  c.held.isCoarse &&
  new Set(found.map(({ slip }) => idsOf(slip).join())).size > 1 &&
  !found.some(({ slip }) => shown(slip, c.facts) > 0);

/** A litre taken for a kilogram, in a logbook whose own density cancels wherever it is right, so that nobody knows it. */
function byOwnDensity(c: Checking): Match | undefined {
  if (c.readings.isDensityStated === true) return undefined;
  const slips = slipsFor(c.role, c.readings).filter(
    ({ ways }) => ways.oilDensity === 1 || ways.sampleDensity === 1,
  );
  return best(c, all(c, slips, densitiesApart), densitiesApart);
}

/** The one mistake that gives the figure: within its digits, else nearly. */
export function explained(c: Checking): Match | undefined {
  const allowed = allowedIn(c);
  const found = all(c, slipsFor(c.role, c.readings), allowed);
  if (isOpen(c, found)) return undefined;
  return (
    best(c, found) ??
    best(
      c,
      found.filter((each) => !isCopy(each)),
      allowed,
    ) ??
    byOwnDensity(c)
  );
}

/** The parts are right and their sum is not: it was taken over from elsewhere, or added wrongly. */
export function addedWrongly(c: Checking): Match | undefined {
  const { role, held, right, writtens } = c;
  const parts = right.filter((each) => each.role === "acidDose" || each.role === "reactionDose");
  if (parts.length < 2 || (role !== "catalyst" && role !== "catalystRate")) return undefined;
  const copies = slipsFor(role, c.readings).filter((slip) => isCopy({ slip }));
  const copied = best(c, all(c, copies));
  if (copied) return copied;
  const ways = { result: () => held.value };
  const slip: Slip = { made: [{ id: "slip-of-addition", ways }], ways };
  return {
    slip,
    written: writtens[0] ?? "weighed",
    evidence: 0,
    off: 0,
    isUsual: false,
    isFromAcidValue: false,
    orElse: [],
  };
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
