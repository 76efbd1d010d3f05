/**
 * Grams of lye to the litre are what a burette holds, what new oil takes, or a dose: one word, one unit. The
 * arithmetic tells them apart: is it the same all the time, does it come again in what the oil got? What no
 * arithmetic tells, and no word of one of them alone, is never called sure.
 */
import type { Candidate, RoleScore } from "../context";
import { median } from "../numbers-of-column";
import type { RoleId } from "../roles";
import { sureFrom } from "../sure";
import { readWords } from "../words/read-words";
import type { Meant } from "../words/symbols";
import { type Figures, type LyeTable, lyeTable, ratios, steadyRatio, times } from "./lye-table";

interface Scored {
  readonly candidate: Candidate;
  readonly scores: RoleScore[];
}

const family: readonly RoleId[] = [
  "strength",
  "baseCharge",
  "acidDose",
  "reactionDose",
  "catalystRate",
];

const ofLye: ReadonlySet<Meant> = new Set(["lye", "catalyst", "base", "newOil"] as const);
const ofReaction: ReadonlySet<Meant> = new Set(["reaction"] as const);
/** Words of one of the family alone. */
const telling: ReadonlySet<Meant> = new Set([
  ...(["standard", "newOil", "dose", "reaction", "extra", "neutralise", "acid", "ffa"] as const),
  ...(["perLitre", "total", "titrant", "solution", "burette", "strength", "titre"] as const),
]);
/** A word only near to one of them, misspelt or not, is no witness of its own. */
const isWitness = 0.95;

const isOf = ({ parts }: Candidate, words: ReadonlySet<Meant>, least = isWitness): boolean =>
  readWords(parts.text).some(
    ({ meanings, quality }) =>
      quality >= least && meanings.some(({ concept }) => words.has(concept)),
  );

const leastRows = 4;
const isSteady = ({ facts: { filled, different } }: Candidate): boolean =>
  filled >= leastRows && different <= Math.max(3, filled / 3);

/** What new oil takes, of KOH or NaOH: common practice, no source. */
const usual: Readonly<Record<string, readonly [number, number]>> = {
  "g/L": [3.4, 10.5],
  "g/kg": [3.7, 11.5],
  "%": [0.37, 1.15],
};
/** More was weighed out by so much at most, of lye that is not pure. */
const mostForPurity = 1.45;
/** Good oil takes little more than new oil does. */
const mostForGoodOil = 2.5;
const same = 0.03;

/** Does it come again in what the oil got? */
function isCharge(own: Figures, unit: string, { oilFor, reaction, total }: LyeTable): boolean {
  const given = times(own, oilFor(unit));
  const ratio = reaction && steadyRatio(reaction, given);
  if (reaction) return ratio !== undefined && ratio > 1 - same && ratio < mostForPurity;
  const inAll = total ? ratios(total, given) : [];
  const least = Math.min(...inAll);
  return inAll.length >= leastRows && least > 1 - same && least < mostForGoodOil;
}

function isAll(own: Figures, unit: string, { oilFor, total }: LyeTable): boolean {
  const ratio = total && steadyRatio(total, times(own, oilFor(unit)));
  return ratio !== undefined && Math.abs(ratio - 1) < same;
}

const changed = (scores: readonly RoleScore[], by: (role: RoleId, score: number) => number) =>
  scores.map((each) =>
    family.includes(each.role)
      ? { ...each, score: Math.max(0, by(each.role, each.score)) }
      : { ...each },
  );

/** Only the word says it: never sure; and left open, with both offered, where two fit as well. */
function openBetween(scores: readonly RoleScore[]): RoleScore[] {
  const own = scores.filter(({ role }) => family.includes(role)).map(({ score }) => score);
  const [first = 0, second = 0] = own.sort((a, b) => b - a);
  const most = second > 0.2 && first - second < 0.15 ? 0.4 : sureFrom - 0.01;
  return changed(scores, (_, score) => Math.min(score, most));
}

function judgedOne({ candidate, scores }: Scored, own: Figures, table: LyeTable): RoleScore[] {
  const { unit = "" } = candidate.parts;
  const [low = 0, high = 0] = usual[unit] ?? [];
  const middle = median(candidate.facts.numbers);
  const isBare = !isOf(candidate, telling);
  const fits = isSteady(candidate) && middle >= low && middle <= high;
  const isOther = isOf(candidate, ofReaction) || !table.hasTitrantElsewhere;
  if (fits && !isOther && isCharge(own, unit, table)) {
    const old = scores.find(({ role }) => role === "baseCharge");
    const found: RoleScore = {
      role: "baseCharge",
      score: Math.max(old?.score ?? 0, isBare ? 0.6 : 0) + 0.25,
      reasons: [...(old?.reasons ?? []), "it comes again in what the oil got"],
    };
    return [
      found,
      ...changed(scores, (_, score) => score - 0.45).filter((each) => each.role !== "baseCharge"),
    ];
  }
  if (isAll(own, unit, table))
    return changed(scores, (role, score) => score + (role === "catalystRate" ? 0.15 : -0.1));
  // what is worked out differs from row to row
  const isWorked = (role: RoleId): boolean =>
    role === "catalystRate" ||
    role === "acidDose" ||
    (role === "reactionDose" && !isOf(candidate, ofReaction));
  const doses = isSteady(candidate)
    ? changed(scores, (role, score) => score - (isWorked(role) ? 0.4 : 0))
    : scores;
  return isBare ? openBetween(doses) : [...doses];
}

export function lyePerLitre(
  all: readonly Scored[],
  settled: ReadonlyMap<number, RoleScore>,
  figures: ReadonlyMap<number, Figures>,
): Scored[] {
  return all.map((each) => {
    const { column, parts } = each.candidate;
    const role = settled.get(column)?.role;
    const isRate = parts.unit !== undefined && usual[parts.unit] !== undefined;
    const isOurs = role === undefined ? parts.unit !== "%" : family.includes(role);
    if (!isRate || !isOurs || !isOf(each.candidate, ofLye, 0.85)) return each;
    const table = lyeTable(all, settled, figures, column);
    const scores = judgedOne(each, figures.get(column) ?? [], table);
    return { candidate: each.candidate, scores: scores.sort((a, b) => b.score - a.score) };
  });
}
