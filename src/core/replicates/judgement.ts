/**
 * What a set of replicates is worth: each reading agrees, is suspect, or lies apart. Flagged and
 * explained, never dropped. "Not flagged" is no agreement: three readings on a coarse scale can hide a
 * slip of any size from a test, so that how far they lie apart counts too.
 */
import { atMost } from "../exact/compare";
import { computed, type Exact } from "../exact/exact";
import { largest, range } from "../exact/lists";
import type { UsualScatter } from "../record/pooled-scatter";
import { threeDrops, threeSteps } from "../reference/agreement";
import { deviations } from "./deviations";
import { outlierTest, type ReplicateSet, riskAt } from "./outlier-test";
import { studentT } from "./student-t";

export type Mark = "agrees" | "suspect" | "apart" | "not tested";

/** Two as far from the mean as each other, but for a rounding error. */
const tie = 1 - 1e-10;

export interface Judgement {
  /** One for each reading. */
  readonly marks: readonly Mark[];
  /** Place of the reading that is suspect. */
  readonly suspect: number | undefined;
  /** mL: how far from the mean by the record, how far apart by three drops or steps. */
  readonly allowed: number;
  /** By the record: how far from the mean the farthest lies, mL. */
  readonly farthest: number | undefined;
}

/** Farther from its mean than this a reading of so many is not explained by a scatter known from elsewhere. */
export const explained = (usual: UsualScatter, count: number, risk: number): number =>
  studentT(risk / count, usual.freedom) * usual.scatter * Math.sqrt((count - 1) / count);

/** Largest distance from the mean, where it is, and whether another lies as far. */
function farthestOf(values: readonly Exact[]): { size: number; place: number; isTied: boolean } {
  const sizes = deviations(values).map(Math.abs);
  const size = Math.max(...sizes);
  return {
    size,
    place: sizes.indexOf(size),
    isTied: sizes.filter((each) => each >= size * tie).length > 1,
  };
}

export const without = <T>(values: readonly T[], place: number | undefined): T[] =>
  values.filter((_, each) => each !== place);

const marked = (count: number, mark: Mark, suspect?: number): Mark[] =>
  Array.from({ length: count }, (_, place) => (place === suspect ? "suspect" : mark));

/** By the record (ASTM E178, a scatter known from elsewhere; t by Bonferroni's inequality). */
function byRecord(set: ReplicateSet, usual: UsualScatter): Judgement {
  const { judged } = set;
  const count = judged.length;
  const risk = riskAt(set.confidence);
  const allowed = explained(usual, count, risk);
  const { size, place, isTied } = farthestOf(judged);
  const isWithin = (distance: number, limit: number): boolean =>
    atMost(computed(distance), computed(limit));
  const found = { allowed, farthest: size, suspect: undefined };
  if (isWithin(size, allowed)) return { ...found, marks: marked(count, "agrees") };
  if (isTied) return { ...found, marks: marked(count, "apart") };
  const others = without(judged, place);
  const ofOthers = explained(usual, others.length, risk);
  const mark = isWithin(farthestOf(others).size, ofOthers) ? "agrees" : "apart";
  return { ...found, marks: marked(count, mark, place), suspect: place };
}

/** How far apart readings may lie that agree, mL: three drops, or three steps. */
export const limitApart = ({ step }: ReplicateSet): Exact =>
  largest([threeDrops, step.times(threeSteps)]);

/** By this set alone: one outlier test, and whatever it says, how far the others lie apart. */
function byItself(set: ReplicateSet): Judgement {
  const found = outlierTest(set);
  const suspect = found?.isSuspect ? found.position : undefined;
  const limit = limitApart(set);
  const others = without(set.judged, suspect);
  const mark = atMost(range(others), limit) ? "agrees" : "apart";
  return {
    marks: marked(set.judged.length, mark, suspect),
    suspect,
    allowed: limit.toNumber(),
    farthest: undefined,
  };
}

/** By the record where the set has one, otherwise by the set itself. */
export function judgement(set: ReplicateSet): Judgement {
  if (set.judged.length > 1) return set.usual ? byRecord(set, set.usual) : byItself(set);
  return { marks: ["not tested"], suspect: undefined, allowed: 0, farthest: undefined };
}
