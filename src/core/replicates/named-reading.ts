import { decimalSlip } from "./decimal-slip";
import type { Judgement, Mark } from "./judgement";
import { type Lone, loneReading } from "./lone-reading";
import type { ReplicateSet } from "./outlier-test";

/** The one reading that the verdict speaks of; undefined where it speaks of all, or of none. */
export type Named =
  | ({ readonly by: "slip" } & NonNullable<ReturnType<typeof decimalSlip>>)
  | ({ readonly by: "lone" } & Lone);

export function namedReading(set: ReplicateSet, found: Judgement): Named | undefined {
  const slip = decimalSlip(set, found);
  if (slip) return { by: "slip", ...slip };
  const lone = loneReading(set, found);
  return lone && { by: "lone", ...lone };
}

/**
 * What is shown beside each reading, in one voice with the verdict: where that names one, the others
 * are not flagged.
 */
export function shownMarks(set: ReplicateSet, found: Judgement): readonly Mark[] {
  const named = namedReading(set, found);
  if (named === undefined) return found.marks;
  const mark = named.place === found.suspect ? "suspect" : "apart";
  return found.marks.map((_, place) => (place === named.place ? mark : "agrees"));
}
