import { atMost } from "../exact/compare";
import { computed } from "../exact/exact";
import { range } from "../exact/lists";
import { as, type Millilitre } from "../quantity/quantity";
import { type Judgement, without } from "./judgement";
import type { ReplicateSet } from "./outlier-test";

/** How many times too large or too small a reading with its point in the wrong place is. */
export const slips = ["10", "100", "0.1", "0.01"] as const;
export type Times = (typeof slips)[number];

/** A reading ten or a hundred times the others, or a tenth: what it may have been. */
export interface Slip {
  readonly place: number;
  readonly times: Times;
  /** mL, as it would have been typed. */
  readonly perhaps: Millilitre;
}

export const fewestForSlip = 3;

/**
 * A decimal point in the wrong place: one reading of three or more that is a power of ten times the
 * others within what they may lie apart.
 * @returns undefined where all agree, or nothing of the kind explains it
 */
export function decimalSlip(set: ReplicateSet, { marks, allowed }: Judgement): Slip | undefined {
  const isAsked = set.judged.length >= fewestForSlip && marks.some((mark) => mark !== "agrees");
  if (!isAsked) return undefined;
  const isNear = (judged: readonly Millilitre[]): boolean =>
    atMost(range(judged), computed(allowed));
  if (isNear(set.judged)) return undefined;
  for (const [place, typed] of set.readings.entries()) {
    const others = without(set.judged, place);
    for (const times of slips) {
      const perhaps = as("mL", typed.div(times));
      if (isNear([...others, set.asJudged(perhaps, place)])) return { place, times, perhaps };
    }
  }
  return undefined;
}
