/** The scores of all columns once more, after the arithmetic was tried: what the figures bear out counts for more. */
import type { Candidate, RoleScore } from "../context";
import { hasUnknown } from "../words/speaks-for";
import { followsAs } from "./follows";
import { roughTitres } from "./rough-titres";
import type { RoleId } from "../roles";

interface Scored {
  readonly candidate: Candidate;
  readonly scores: RoleScore[];
}

/** Roles between which the arithmetic decides. */
const worked: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "catalyst",
  "oilMass",
];

const readings: readonly RoleId[] = ["meanTitre", "correctedTitre"];

/** What follows in nearly all rows, and what does not. */
const doesFollow = 0.75;
const doesNot = 0.4;

/** The scores once more, after it was tried which of them the figures bear out. */
export function judged(
  all: readonly Scored[],
  settled: ReadonlyMap<number, RoleScore>,
  figures: ReadonlyMap<number, readonly (number | undefined)[]>,
): Scored[] {
  const of = (role: RoleId, but: number) =>
    [...settled].flatMap(([column, each]) =>
      each.role === role && column !== but ? [figures.get(column) ?? []] : [],
    );
  const rough = roughTitres(
    all.flatMap(({ candidate }) =>
      settled.get(candidate.column)?.role === "titre" ? [candidate] : [],
    ),
    figures,
  );
  return all.map(({ candidate, scores }) => {
    if (rough.has(candidate.column)) return { candidate, scores: [] };
    const { column } = candidate;
    const own = figures.get(column) ?? [];
    const isUnheard = hasUnknown(candidate.parts.text);
    const share = (role: RoleId) => followsAs(role, own, (from) => of(from, column));
    const isReading = readings.some((role) => (share(role) ?? 0) >= doesFollow);
    const tried = scores.map((each) => {
      if (!worked.includes(each.role) || each.score < 0.2) return each;
      // the mean itself is in nearly one ratio to the acid too
      if (isReading && !readings.includes(each.role)) return { ...each, score: each.score - 0.6 };
      const follows = share(each.role);
      if (follows === undefined) return each;
      if (follows >= doesFollow)
        return {
          ...each,
          score: each.score + 0.25,
          reasons: [...each.reasons, "its figures follow from the others"],
        };
      if (follows >= doesNot) return each;
      // what no word and no figure speaks for is left to a person
      const less = isUnheard ? 0.5 : 0.12;
      return { ...each, score: each.score - less, fails: true as const };
    });
    return { candidate, scores: tried.sort((a, b) => b.score - a.score) };
  });
}
