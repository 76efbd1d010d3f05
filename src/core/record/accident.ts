/** Titrations that say nothing of the hand: what is usual is told without them, wherever it is told. */
import { range } from "../exact/lists";
import type { Millilitre } from "../quantity/quantity";
import { usual as usually } from "../reference/defaults";
import { judgement } from "../replicates/judgement";
import { timesApart } from "../replicates/lone-reading";
import { replicateSet } from "../replicates/outlier-test";
import type { PastTitration } from "./usual-scatter";

/** Do its readings lie so far apart that no scatter explains it? */
function isAccident({ titres, blanks, samples }: PastTitration, step: Millilitre): boolean {
  const sets = [
    replicateSet(titres, step, usually.confidence, { samples, blanks }),
    ...(blanks.length > 0 ? [replicateSet(blanks, step, usually.confidence)] : []),
  ];
  return sets.some((set) => range(set.judged).gt(timesApart * judgement(set).allowed));
}

/** The record with those left out whose readings lie so far apart that something happened. */
export const withoutAccidents = <Row extends PastTitration>(
  record: readonly Row[],
  step: Millilitre,
): readonly Row[] => record.filter((row) => !isAccident(row, step));
