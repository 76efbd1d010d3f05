/** Is a figure with a doubt below its limit? Guarded acceptance (JCGM 106:2012, 8.3). */
import { atMost } from "../exact/compare";
import { type Exact, exact } from "../exact/exact";

/** Of a normal distribution, one side, 95 %; and two sides, 95 %, as an expanded uncertainty has it. */
const oneSided = exact("1.645");
const twoSided = exact("1.96");

export interface AgainstLimit {
  readonly verdict: "below" | "above" | "cannot tell";
  /** At or below this it is at least 95 % sure to be under the limit; above `upper`, over it. */
  readonly lower: Exact;
  readonly upper: Exact;
  /** A ± as large as this would just decide it; 0 at the limit itself. */
  readonly deciding: Exact;
}

/**
 * @param uncertainty expanded, 95 %: the ± beside the value
 * @example againstLimit(0.38335, 0.025, 0.50) // below: 0.50 less 1.645 × 0.025 / 1.96 is 0.479
 */
export function againstLimit(value: Exact, uncertainty: Exact, limit: Exact): AgainstLimit {
  const guard = uncertainty.times(oneSided).div(twoSided);
  const lower = limit.minus(guard);
  const upper = limit.plus(guard);
  const isAbove = atMost(value, upper) ? "cannot tell" : "above";
  return {
    verdict: atMost(value, lower) ? "below" : isAbove,
    lower,
    upper,
    deciding: value.minus(limit).abs().times(twoSided).div(oneSided),
  };
}
