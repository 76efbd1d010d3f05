/** Which two mistakes together give a wrong figure. */
import type { Checking } from "./checking";
import { isContradicted } from "./contradicted";
import { asWorked, best, type Match, type Start, startsOf, type Worked, workedTo } from "./match";
import { pairableIn, type Slip, slipsFor, waysTogether } from "./slips";
import { distance } from "./tries";

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
