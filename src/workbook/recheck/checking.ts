/** What one figure is checked with. */
import type { RoleId } from "../recognising/roles";
import type { FormulaFacts } from "./formula-facts";
import type { HeldFigure } from "./held-figure";
import type { Readings } from "./readings";
import type { Slip } from "./slips";
import type { Origin } from "./upstream";
import type { Written } from "./worked-out";

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
  /** Where the lye's assay is not known: acid values are worked out as if it were pure. */
  readonly acidOfPureLye: boolean;
}

/** Keeps a column's mistakes, so that the next row need not try them all. */
export interface Memory {
  last: Slip | undefined;
  pairs: Slip[];
  /** How often two mistakes at once may still be tried. */
  pairTries: number;
}
export const freshMemory = (): Memory => ({ last: undefined, pairs: [], pairTries: 100 });
