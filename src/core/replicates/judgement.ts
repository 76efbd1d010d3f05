/**
 * What a set of replicates is worth: each reading agrees, is suspect, or lies apart. Flagged and
 * explained, never dropped. "Not flagged" is no agreement: three readings on a coarse scale can hide a
 * slip of any size from a test, so that how far they lie apart counts too.
 */
import { atMost } from "../exact/compare";
import { computed, type Exact, exact } from "../exact/exact";
import { largest, range } from "../exact/lists";
import type { UsualScatter } from "../record/usual";
import { deviations } from "./deviations";
import { outlierTest, type ReplicateSet, riskAt } from "./outlier-test";
import { studentT } from "./student-t";

export type Mark = "agrees" | "suspect" | "apart" | "not tested";

/** Readings farther apart than three drops of 0.05 mL, or three steps, do not agree (common practice, no source). */
const threeDrops = exact("0.15");
const steps = 3;

/** Two as far from the mean as each other, but for a rounding error. */
const tie = 1 - 1e-10;

interface Judgement {
  /** One for each reading. */
  readonly marks: readonly Mark[];
  /** Place of the reading that is suspect. */
  readonly suspect: number | undefined;
  /** How far apart readings may lie, mL: by the record or by three drops and steps. */
  readonly allowed: number;
}

/** Farther from its mean than this a reading of so many is not explained by a scatter known from elsewhere. */
const explained = (usual: UsualScatter, count: number, risk: number): number =>
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

const without = <T>(values: readonly T[], place: number | undefined): T[] =>
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
  if (isWithin(size, allowed)) {
    return { marks: marked(count, "agrees"), suspect: undefined, allowed };
  }
  if (isTied) return { marks: marked(count, "apart"), suspect: undefined, allowed };
  const others = without(judged, place);
  const ofOthers = explained(usual, others.length, risk);
  const mark = isWithin(farthestOf(others).size, ofOthers) ? "agrees" : "apart";
  return { marks: marked(count, mark, place), suspect: place, allowed };
}

/** By this set alone: one outlier test, and whatever it says, how far the others lie apart. */
function byItself(set: ReplicateSet): Judgement {
  const found = outlierTest(set);
  const suspect = found?.isSuspect ? found.position : undefined;
  const limit = largest([threeDrops, set.step.times(steps)]);
  const others = without(set.judged, suspect);
  const mark = atMost(range(others), limit) ? "agrees" : "apart";
  return { marks: marked(set.judged.length, mark, suspect), suspect, allowed: limit.toNumber() };
}

/** @param usual how the same hand scattered before; left out: the set speaks for itself */
export function judgement(set: ReplicateSet, usual?: UsualScatter): Judgement {
  if (set.judged.length === 1) return { marks: ["not tested"], suspect: undefined, allowed: 0 };
  return usual ? byRecord(set, usual) : byItself(set);
}

/** A reading ten or a hundred times the others, or a tenth: what it may have been. */
interface Slip {
  readonly place: number;
  readonly times: "10" | "100" | "0.1" | "0.01";
  readonly perhaps: Exact;
}

const slips = ["10", "100", "0.1", "0.01"] as const;

/**
 * A decimal point in the wrong place: one reading that is a power of ten times the others within what
 * they may lie apart.
 */
export function decimalSlip(set: ReplicateSet, { marks, allowed }: Judgement): Slip | undefined {
  if (set.judged.length < 3 || marks.every((mark) => mark === "agrees")) return undefined;
  for (const [place, reading] of set.judged.entries()) {
    const others = without(set.judged, place);
    for (const times of slips) {
      const perhaps = reading.div(times);
      const near = computed(allowed);
      if (atMost(range([...others, perhaps]), near) && !atMost(range([...others, reading]), near)) {
        const typed = set.readings[place];
        if (typed) return { place, times, perhaps: typed.div(times) };
      }
    }
  }
  return undefined;
}
