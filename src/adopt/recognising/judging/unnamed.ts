/**
 * Columns of which no word is known: what their figures can only be beside the columns that are known. One rule
 * leads to the next, since a mean that was found makes a net titre; where two columns, or two roles, fit alike,
 * nothing is said; and nobody is sure.
 */
import type { Candidate, RoleScore } from "../context";
import { fromUnit } from "../evidence";
import { unitOfColumn } from "../measures/units-of-roles";
import { type RoleId, roleOf } from "../roles";
import { likelyFrom } from "../sure";
import { hasUnknown, isElsewhere, isUnread } from "../words/speaks-for";
import type { Figures } from "./figures";
import type { KnownTable, Unnamed } from "./known-table";
import { batchRules } from "./unnamed-batch";
import { oilAndMethanol, threeThatAddUp } from "./unnamed-sums";
import { isReplicate, titrationRules } from "./unnamed-titration";
import { wordRules } from "./unnamed-words";

interface Scored {
  readonly candidate: Candidate;
  readonly scores: RoleScore[];
}

const rules = [...titrationRules, ...batchRules, ...wordRules];
/** Used, and never sure. */
const found = 0.55;

const tableOf = (
  all: readonly Scored[],
  known: ReadonlyMap<number, RoleId>,
  figures: ReadonlyMap<number, Figures>,
): KnownTable => {
  const columns = (role: RoleId): Candidate[] =>
    all.flatMap(({ candidate }) => (known.get(candidate.column) === role ? [candidate] : []));
  const lists = (role: RoleId): Figures[] =>
    columns(role).map(({ column }) => figures.get(column) ?? []);
  return {
    has: (role) => columns(role).length > 0,
    of: (role) => lists(role)[0],
    all: lists,
    unit: (role) => {
      const [first] = columns(role);
      return first && unitOfColumn(role, first.parts, first.facts);
    },
  };
};

/** A word of it is not known, and none says that it is no role. */
const isOpen = ({ parts: { text } }: Candidate): boolean =>
  isUnread(text) || (hasUnknown(text) && !isElsewhere(text, undefined));

/** What a unit beside it does not speak against. */
const mayBe = ({ candidate: { parts } }: Unnamed, role: RoleId): boolean =>
  fromUnit(roleOf(role), parts).points >= 0;

/** One more round: which column is now told by those that are known. */
function toldIn(left: readonly Unnamed[], table: KnownTable): ReadonlyMap<number, RoleId> {
  const together = [threeThatAddUp(left, table), oilAndMethanol(left, table)].find(
    ({ size }) => size > 0,
  );
  if (together) return together;
  const readings = left.filter((each) => isReplicate(each, left) && mayBe(each, "titre"));
  if (readings.length > 0)
    return new Map(readings.map(({ candidate: { column } }) => [column, "titre"]));
  const claims = left.flatMap((each) => {
    const roles = new Set(rules.flatMap((rule) => rule(each, table)));
    const [role, other] = [...roles].filter((one) => mayBe(each, one));
    return role === undefined || other !== undefined
      ? []
      : [{ column: each.candidate.column, role }];
  });
  return new Map(
    claims
      .filter((own) => !claims.some((each) => each !== own && each.role === own.role))
      .map(({ column, role }) => [column, role]),
  );
}

const mostRounds = 6;

export function unnamed(
  all: readonly Scored[],
  settled: ReadonlyMap<number, RoleScore>,
  figures: ReadonlyMap<number, Figures>,
): Scored[] {
  let left = all.flatMap(({ candidate }): Unnamed[] =>
    isOpen(candidate) && !settled.has(candidate.column)
      ? [{ candidate, own: figures.get(candidate.column) ?? [] }]
      : [],
  );
  if (left.length === 0) return [...all];
  const known = new Map(
    all.flatMap(({ candidate: { column, parts } }) => {
      const { role, score = 0 } = settled.get(column) ?? {};
      // several that are numbered speak for each other
      const isKnown = score >= likelyFrom || (role === "titre" && parts.number !== undefined);
      return role !== undefined && isKnown ? [[column, role] as const] : [];
    }),
  );
  const told = new Map<number, RoleId>();
  for (let round = 0; round < mostRounds; round += 1) {
    const more = toldIn(left, tableOf(all, known, figures));
    if (more.size === 0) break;
    for (const [column, role] of more) {
      known.set(column, role);
      told.set(column, role);
    }
    left = left.filter(({ candidate: { column } }) => !more.has(column));
  }
  return all.map((each) => {
    const role = told.get(each.candidate.column);
    if (role === undefined) return each;
    const reasons = ["its figures follow from the columns beside it"];
    return { ...each, scores: [{ role, score: found, reasons }] };
  });
}
