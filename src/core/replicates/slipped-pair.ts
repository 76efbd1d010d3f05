import { atMost } from "../exact/compare";
import { computed, type Exact, exact } from "../exact/exact";
import { largest, range, smallest } from "../exact/lists";
import { as } from "../quantity/quantity";
import type { Judgement } from "./judgement";
import type { ReplicateSet } from "./outlier-test";
import { placesOf } from "./verdict";

/** How many times the other the larger of two is when its point slipped. */
const slips = { "10": "ten times", "100": "a hundred times" } as const;

/** Of small titres three drops are a large part: the two must also be this near to each other. */
const nearness = exact("0.2");

/**
 * Of two readings no one can say which is off; that one is ten or a hundred times the other, within
 * what they may lie apart, can be said. With three the verdict names the reading.
 * @returns "24.50 mL is about ten times 2.45 mL: a slipped point?"
 */
export function slippedPair(set: ReplicateSet, { marks, allowed }: Judgement): string | undefined {
  if (set.readings.length !== 2 || !marks.includes("apart")) return undefined;
  const [large, small] = [largest(set.readings), smallest(set.readings)];
  const place = set.readings.findIndex((reading) => reading.eq(large));
  const other = set.judged[1 - place];
  const isNear = (times: string): boolean => {
    if (!other) return false;
    const apart: Exact = range([set.asJudged(as("mL", large.div(times)), place), other]);
    return atMost(apart, computed(allowed)) && atMost(apart, other.times(nearness));
  };
  for (const times of ["10", "100"] as const) {
    if (!isNear(times)) continue;
    const [first, second] = [large, small].map((each) => each.toFixed(placesOf(set)));
    return `${first ?? ""} mL is about ${slips[times]} ${second ?? ""} mL: a slipped point?`;
  }
  return undefined;
}
