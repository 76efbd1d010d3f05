/**
 * Grams of lye in several columns, whatever they are called: two that make up a third are the acid's and the
 * reaction's part of the whole, and what is nearly the whole in each row is what was really weighed.
 */
import type { Candidate, RoleScore } from "../context";
import { median } from "../numbers-of-column";
import type { RoleId } from "../roles";
import { steadyRatio } from "./lye-table";

type Figures = readonly (number | undefined)[];

interface Scored {
  readonly candidate: Candidate;
  readonly scores: RoleScore[];
}

const family: readonly RoleId[] = ["acidDose", "reactionDose", "catalyst", "weighed"];
const inMass: ReadonlySet<string> = new Set(["g", "kg", "lb", "oz"]);

const leastRows = 4;
/** What is rounded; what a scale and a hand make of it. */
const rounding = 0.012;
const byHand = 0.04;
/** Less of the whole is no part that anybody writes down. */
const leastPart = 0.02;

/** By how much most rows are off; undefined where too few rows tell. */
function offBy(own: Figures, should: (at: number) => number | undefined): number | undefined {
  const off = own.flatMap((value, at) => {
    const right = should(at);
    return value === undefined || right === undefined || right <= 0
      ? []
      : [Math.abs(value / right - 1)];
  });
  return off.length < leastRows ? undefined : median(off);
}

const sumOf =
  (one: Figures, other: Figures) =>
  (at: number): number | undefined => {
    const [a, b] = [one[at], other[at]];
    return a === undefined || b === undefined || Math.min(a, b) < leastPart * (a + b)
      ? undefined
      : a + b;
  };

const isDose = ({ candidate: { parts, facts }, scores }: Scored): boolean =>
  facts.numbers.length >= leastRows &&
  (inMass.has(parts.unit ?? "") ||
    (parts.unit === undefined &&
      scores.some(({ role, score }) => family.includes(role) && score > 0.4)));

/** The role that arithmetic gives, in front; the rest of the family stand back. */
function given({ candidate, scores }: Scored, role: RoleId): Scored {
  const old = scores.find((each) => each.role === role);
  const found: RoleScore = {
    role,
    score: Math.max(old?.score ?? 0, 0.3) + 0.3,
    reasons: [...(old?.reasons ?? []), "it makes up the lye with the columns beside it"],
  };
  const others = scores
    .filter((each) => each.role !== role)
    .map((each) =>
      family.includes(each.role) ? { ...each, score: Math.max(0, each.score - 0.5) } : each,
    );
  return { candidate, scores: [found, ...others].sort((a, b) => b.score - a.score) };
}

/** Which columns are what: the three that add up, best first. */
function partsOf(
  doses: readonly Scored[],
  of: (each: Scored) => Figures,
  oil: Figures,
): ReadonlyMap<number, RoleId> {
  let best: { off: number; parts: readonly [Scored, Scored]; all: Scored } | undefined;
  doses.forEach((one, at) => {
    for (const other of doses.slice(at + 1))
      for (const all of doses) {
        if (all === one || all === other) continue;
        const off = offBy(of(all), sumOf(of(one), of(other)));
        if (off !== undefined && off < (best?.off ?? rounding))
          best = { off, parts: [one, other], all };
      }
  });
  if (!best) return new Map();
  const { parts, all } = best;
  const [reaction, ...more] = parts.filter((each) => steadyRatio(of(each), oil) !== undefined);
  const found = new Map<number, RoleId>([[all.candidate.column, "catalyst"]]);
  if (reaction && more.length === 0)
    for (const each of parts)
      found.set(each.candidate.column, each === reaction ? "reactionDose" : "acidDose");
  for (const each of doses) {
    if (each === all || parts.includes(each)) continue;
    const off = offBy(of(each), (row) => of(all)[row]);
    if (off !== undefined && off < byHand) found.set(each.candidate.column, "weighed");
  }
  return found;
}

export function doseSums(
  all: readonly Scored[],
  settled: ReadonlyMap<number, RoleScore>,
  figures: ReadonlyMap<number, Figures>,
): Scored[] {
  const doses = all.filter(isDose);
  if (doses.length < 3) return [...all];
  const of = ({ candidate: { column } }: Scored): Figures => figures.get(column) ?? [];
  const oil = all.find(({ candidate: { column } }) => settled.get(column)?.role === "oilAmount");
  const found = partsOf(doses, of, oil ? of(oil) : []);
  return all.map((each) => {
    const role = found.get(each.candidate.column);
    return role === undefined ? each : given(each, role);
  });
}
