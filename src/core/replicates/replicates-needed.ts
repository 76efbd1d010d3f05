import { slack } from "../exact/compare";
import { type Millilitre, type Percent } from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { riskAt } from "./outlier-test";
import { halfWidthOf } from "./spread";

export const fewest = 2;
/** Beyond this the method needs mending, not more titrations. */
export const most = 100;

/**
 * The smallest number of titrations whose mean is known well enough.
 *   smallest n with t s / sqrt n <= half-width
 * @param deviation standard deviation of one titration, mL, from your own history
 * @param halfWidth mL
 * @returns 2 to 100
 * @example replicatesNeeded(0.05, 0.05, 95) // 7
 */
export function replicatesNeeded(
  deviation: Millilitre,
  halfWidth: Millilitre,
  confidence: Percent,
): Outcome<number> {
  const allowed = halfWidth.toNumber() * (1 + slack.toNumber());
  for (let count = fewest; count <= most; count += 1) {
    if (halfWidthOf(deviation.toNumber(), count, riskAt(confidence)) <= allowed) return count;
  }
  return problem({ code: "too-many-replicates", scatter: deviation, halfWidth, most });
}
