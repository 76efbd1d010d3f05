import { type Exact, exact } from "./exact";

/**
 * A limit that was itself computed (a % FFA that should be exactly 5) must not fail by a rounding
 * error in the spreadsheet that computed it, so comparisons with a limit or the edge of a band
 * allow this relative slack. Concordance alone compares exactly.
 */
export const slack = exact("1e-9");

/** value <= limit, allowing the slack. Comparing costs least, and settles nearly every case. */
export const atMost = (value: Exact, limit: Exact): boolean =>
  value.lte(limit) || value.minus(limit).lte(limit.abs().times(slack));

/** value >= limit, allowing the slack. */
export const atLeast = (value: Exact, limit: Exact): boolean =>
  value.gte(limit) || limit.minus(value).lte(limit.abs().times(slack));
