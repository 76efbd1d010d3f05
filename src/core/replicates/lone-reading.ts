import { atMost } from "../exact/compare";
import { computed, type Exact } from "../exact/exact";
import { largest, range, smallest } from "../exact/lists";
import { type Judgement, without } from "./judgement";
import type { ReplicateSet } from "./outlier-test";

/** A reading far from others that agree. */
export interface Lone {
  readonly place: number;
  /** mL from the nearest of the others. */
  readonly distance: Exact;
}

/** So many times what readings may lie apart leaves no doubt that something happened (common practice, no source). */
export const timesApart = 3;

/** How far a reading lies from the nearest of the others, mL; negative where it lies among them. */
function distanceFrom(others: readonly Exact[], reading: Exact): Exact {
  return largest([reading.minus(largest(others)), smallest(others).minus(reading)]);
}

/** Where a set lies apart: the one reading that is far from the rest, while the rest agree. */
function farOne(set: ReplicateSet, allowed: Exact): Lone | undefined {
  for (const [place, reading] of set.judged.entries()) {
    const others = without(set.judged, place);
    const distance = distanceFrom(others, reading);
    const isFar = !atMost(distance, allowed.times(timesApart));
    if (isFar && atMost(range(others), allowed)) return { place, distance };
  }
  return undefined;
}

/**
 * The reading that stands alone: the suspect whose others agree, or, where no test can name it, one so
 * far from two or more that agree that something must have happened.
 */
export function loneReading(set: ReplicateSet, found: Judgement): Lone | undefined {
  const { suspect, marks, allowed } = found;
  if (set.judged.length < 3) return undefined;
  const reading = suspect === undefined ? undefined : set.judged[suspect];
  if (suspect !== undefined && reading) {
    if (!marks.includes("agrees")) return undefined;
    return { place: suspect, distance: distanceFrom(without(set.judged, suspect), reading) };
  }
  return farOne(set, computed(allowed));
}
