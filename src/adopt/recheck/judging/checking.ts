/** What one figure is checked with. */
import type { RoleId } from "../../recognising/roles";
import type { FormulaFacts } from "../reading/formula-facts";
import type { HeldFigure } from "../reading/held-figure";
import type { Readings } from "../reading/readings";
import type { RightFigure } from "./right-figure";
import type { Slip } from "./slips";
import type { Origin } from "../arithmetic/upstream";
import type { Written } from "../arithmetic/expected-figure";

export interface Checking {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly held: HeldFigure;
  readonly readings: Readings;
  /** What the core says should be there, in the column's unit; undefined when it cannot say. */
  readonly core: () => number | undefined;
  /** Held figures that this one may have been worked out from, and how unsure their digits make it. */
  readonly origins: () => readonly Origin[];
  /** Figures before it in the row that are right. */
  readonly right: readonly RightFigure[];
  readonly facts: FormulaFacts | undefined;
  /** How a part of a dose may be written down. */
  readonly writtens: readonly Written[];
  /** The column's commonest mistake, which of two that fit alike is the likelier. Told from rows all
   * over the logbook, so that no verdict hangs on the rows above. */
  readonly usualSlip: Slip | undefined;
  /** The logbook keeps this figure to its digits: what other constants may do is no excuse for a mistake. */
  readonly isExact: boolean;
  /** Where the lye's assay is not known: acid values are worked out as if it were pure. */
  readonly acidOfPureLye: boolean;
}
