/**
 * How sure a guess may be called: only where its figures and its unit agree with it, and nothing beside it,
 * another column or another role, fits as well.
 */
import type { Candidate, RoleScore } from "./context";
import { fromCells, fromUnit } from "./evidence";
import { type RoleId, roleOf } from "./roles";
import { hasUnknown } from "./words/speaks-for";

/** From here a guess is called sure, from there likely. */
export const sureFrom = 0.85;
export const likelyFrom = 0.6;

/** So much apart, two are not as good as each other. */
const apart = 0.06;
/** One word, or one unit, is both ("Charge", grams of lye to the litre): further apart before one of them is sure. */
const oneWord: readonly (readonly [RoleId, RoleId, number])[] = [
  ["lot", "batch", 0.2],
  ["strength", "catalystRate", 0.3],
  ["strength", "baseCharge", 0.2],
  ["reactionDose", "baseCharge", 0.3],
  ["weighed", "titre", 0.5],
  ["weighed", "sampleMass", 0.5],
  ["oil", "lot", 0.3],
];

const apartOf = (one: RoleId, other: RoleId): number =>
  oneWord.find(([a, b]) => (a === one && b === other) || (b === one && a === other))?.[2] ?? apart;

interface Scored {
  readonly candidate: Candidate;
  readonly scores: readonly RoleScore[];
}

const scoreOf = ({ scores }: Scored, { role }: RoleScore): number =>
  scores.find((each) => each.role === role)?.score ?? 0;

/** Another column is as good for a role that stands once, and got it not. */
function hasRival(
  own: Scored,
  best: RoleScore,
  all: readonly Scored[],
  settled: ReadonlyMap<number, RoleScore>,
): boolean {
  if (roleOf(best.role).repeats === true) return false;
  return all.some((each) => {
    if (each.candidate === own.candidate) return false;
    const score = scoreOf(each, best);
    const got = settled.get(each.candidate.column)?.score ?? 0;
    return score >= best.score - apart && got < score;
  });
}

function isFitting({ parts, facts }: Candidate, best: RoleScore): boolean {
  const role = roleOf(best.role);
  if (role.holds !== "number") return true;
  const isNamed = fromUnit(role, parts).points >= 0;
  return isNamed && (facts.numbers.length === 0 || fromCells(role, parts, facts).reason !== "");
}

/** Likely at most. */
export const noSurer = (best: RoleScore): RoleScore => ({
  ...best,
  score: Math.min(best.score, sureFrom - 0.01),
});

export function noSurerThanIsFitting(
  { candidate, scores, best }: Scored & { readonly best: RoleScore },
  all: readonly Scored[],
  settled: ReadonlyMap<number, RoleScore>,
): RoleScore {
  const own = { candidate, scores };
  const isDoubtful =
    best.fails === true ||
    hasUnknown(candidate.parts.text) ||
    !isFitting(candidate, best) ||
    scores.some(
      ({ role, score }) => role !== best.role && score >= best.score - apartOf(role, best.role),
    ) ||
    hasRival(own, best, all, settled);
  return isDoubtful ? noSurer(best) : best;
}
