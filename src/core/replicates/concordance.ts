import { range } from "../exact/lists";
import type { Exact } from "../exact/exact";
import type { Millilitre } from "../quantity/quantity";

/**
 * Do the readings agree within a limit? Compared exactly: 2.25 and 2.35 agree within 0.10.
 * @param readings mL, two or more
 * @param limit mL, itself allowed
 */
export const concordant = (readings: readonly Millilitre[], limit: Exact): boolean =>
  range(readings).lte(limit);
