/**
 * Where a reading lies if chance explains it: the band that a picture of the replicates draws behind
 * them. By the record where there is one, otherwise by three drops or steps, as they are judged.
 */
import { largest, mean, smallest } from "../exact/lists";
import { deviations } from "./deviations";
import { explained, type Judgement, judgement, limitApart, without } from "./judgement";
import { loneReading } from "./lone-reading";
import { outlierTest, type ReplicateSet, riskAt } from "./outlier-test";

/** mL, as the readings are judged. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

const about = (middle: number, reach: number): Band => ({
  from: middle - reach,
  to: middle + reach,
});

/** How far from the middle of so many readings one of them may lie, mL. */
function reachOf(set: ReplicateSet, count: number): number {
  if (set.usual) return explained(set.usual, count, riskAt(set.confidence));
  return limitApart(set).toNumber() / 2;
}

/** What the outlier test holds a suspect against may be narrower than three drops. */
function byTest(set: ReplicateSet): Band | undefined {
  const tested = outlierTest(set);
  if (!tested?.isSuspect) return undefined;
  const off = Math.abs(deviations(set.judged)[tested.position] ?? 0);
  return about(mean(set.judged).toNumber(), (off * tested.critical) / tested.graduated);
}

/**
 * All readings lie within it when they agree; a suspect lies outside the band of the others; of
 * readings that are apart one lies outside at least, and where one stands alone, that one.
 * @param set one reading or more; one alone shows where the second may lie
 * @param found what it was judged, where that is known already
 * @example bandOf of 2.30 and 2.40, step 0.05, no record: 2.275 to 2.425
 */
export function bandOf(set: ReplicateSet, found: Judgement = judgement(set)): Band {
  const [only, second] = set.judged;
  // half of the distance of two readings is how far each lies from their mean
  if (only && !second) return about(only.toNumber(), 2 * reachOf(set, 2));
  const others = without(set.judged, found.suspect ?? loneReading(set, found)?.place);
  const reach = reachOf(set, others.length);
  if (set.usual) return about(mean(others).toNumber(), reach);
  const middle = largest(others).plus(smallest(others)).div(2).toNumber();
  const band = about(middle, reach);
  const tested = byTest(set);
  return tested
    ? { from: Math.max(band.from, tested.from), to: Math.min(band.to, tested.to) }
    : band;
}
