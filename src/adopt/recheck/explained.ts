/** Which mistake gives a wrong figure, or which two. */
import type { Checking } from "./checking";
import { shown } from "./formula-facts";
import type { HeldFigure } from "./held-figure";
import { pairsOf, type Slip, slipsFor } from "./slips";
import { distance, nothing, tries } from "./tries";
import type { Written } from "./worked-out";

export interface Match {
  readonly slip: Slip;
  readonly written: Written;
  /** How many of its mistakes the formula shows. */
  readonly evidence: number;
  /** Off by more than the digits of the held figure, in parts of a thousand. */
  readonly off: number;
  /** The column's commonest mistake. */
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
function matching(c: Checking, slips: readonly Slip[], allowed = 0): Match | undefined {
  let best: Match | undefined;
  const froms = [...nothing, ...c.origins()];
  for (const slip of slips) {
    const evidence = shown(slip, c.facts);
    const isUsual = c.usualSlip?.ids.join() === slip.ids.join();
    for (const each of tries(c, slip.ways, froms)) {
      if (distance(c.held, each, allowed) > 1) continue;
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

/** Other constants of the trade and rounding along the way are no second mistake. */
const conventional = 0.004;

/** The one mistake that gives the figure: within its digits, else nearly. */
export function explained(c: Checking): Match | undefined {
  const slips = slipsFor(c.role, c.readings);
  return matching(c, slips) ?? matching(c, slips, conventional);
}

/** The two mistakes that give it together. */
export const explainedTwice = (c: Checking): Match | undefined =>
  matching(c, pairsOf(slipsFor(c.role, c.readings)));

/** A mistake that gives the figure and that the formula itself shows. */
export function shownByFormula(c: Checking): Match | undefined {
  const { facts } = c;
  if (!facts) return undefined;
  return matching(
    c,
    slipsFor(c.role, c.readings).filter((slip) => shown(slip, facts) === slip.ids.length),
  );
}
