/** Which mistake gives a wrong figure, or which two. */
import type { Checking } from "./checking";
import { shown } from "./formula-facts";
import type { HeldFigure } from "./held-figure";
import { pairsOf, type Slip, slipsFor } from "./slips";
import { distance, nothing, tries } from "./tries";
import type { Written } from "./worked-out";

interface Match {
  readonly slip: Slip;
  readonly written: Written;
  /** How many of its mistakes the formula shows. */
  readonly evidence: number;
  /** Off by more than the digits of the held figure, in parts of a thousand. */
  readonly off: number;
  /** The same mistake was made in this column before. */
  readonly isUsual: boolean;
}

function perThousandOff(held: HeldFigure, value: number): number {
  const beyond = Math.abs(held.value - value) - held.halfDigit;
  return Math.round((1000 * Math.max(0, beyond)) / Math.abs(value));
}

const isBetter = (one: Match, other: Match | undefined): boolean =>
  other === undefined ||
  one.evidence > other.evidence ||
  (one.evidence === other.evidence && one.off < other.off) ||
  (one.evidence === other.evidence && one.off === other.off && one.isUsual && !other.isUsual);

/** The slip that gives the held figure: one that the formula shows, one that fits closer, the column's usual one,
 * the first. */
function matching(c: Checking, slips: readonly Slip[]): Match | undefined {
  let best: Match | undefined;
  const froms = [...nothing, ...c.origins()];
  for (const slip of slips) {
    const evidence = shown(slip, c.facts);
    const isUsual = c.memory.last?.ids.join() === slip.ids.join();
    for (const each of tries(c, slip.ways, froms)) {
      if (distance(c.held, each) > 1) continue;
      const found = {
        slip,
        written: each.written,
        evidence,
        off: perThousandOff(c.held, each.value),
        isUsual,
      };
      if (isBetter(found, best)) best = found;
    }
  }
  return best;
}

export function explained(c: Checking): Match | undefined {
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

export function explainedTwice(c: Checking): Match | undefined {
  const { memory } = c;
  const known = matching(c, memory.pairs);
  if (known || memory.pairTries <= 0) return known;
  memory.pairTries -= 1;
  const pair = matching(c, pairsOf(slipsFor(c.role, c.readings)));
  if (pair) memory.pairs.push(pair.slip);
  return pair;
}
