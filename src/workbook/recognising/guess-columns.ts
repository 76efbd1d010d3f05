/**
 * Which column is which quantity: every role is scored for every column, then the table is looked at
 * as a whole, since "mL" twice is two titres and one of two "Oil" columns is the kind.
 */
import { fromCells, fromFormula, fromUnit, fromWords } from "./evidence";
import { type Candidate, contexts, type RoleScore } from "./context";
import { fullHeading } from "./full-heading";
import { type HeadingParts, headingParts } from "./heading";
import type { TablePlace } from "./find-tables";
import { type ColumnFacts, columnFacts, median } from "./numbers-of-column";
import { type Role, type RoleId, roles } from "./roles";
import type { SheetCells } from "./sheet-cells";

export interface ColumnGuess extends RoleScore {
  readonly column: number;
  /** As it stands on the sheet, group and unit added: "Titres 1 (mL)". */
  readonly heading: string;
  readonly unit: string | undefined;
  /** Other roles it could be, the likeliest first. */
  readonly others: readonly RoleScore[];
}

/** Below this a column stays unused until somebody says what it is. */
const leastScore = 0.42;

function score(
  role: Role & { id: RoleId },
  heading: string,
  parts: HeadingParts,
  facts: ColumnFacts,
): RoleScore {
  const words = fromWords(role.id, parts, heading);
  const unit = fromUnit(role, parts);
  const cells = fromCells(role, parts, facts);
  const formula = fromFormula(role, facts);
  // Cells alone never make a role, unless they are dates or the unit says it all.
  const isGrounded =
    words.points > 0 || unit.points >= 0.4 || formula.points >= 0.3 || cells.points >= 0.45;
  const all = [words, unit, cells, formula];
  const sum = all.reduce((total, { points }) => total + points, 0);
  const reasons = all.map(({ reason }) => reason).filter((reason) => reason !== "");
  return { role: role.id, score: isGrounded ? Math.max(0, sum) : 0, reasons };
}

function withContext(candidate: Candidate, all: readonly Candidate[]): RoleScore[] {
  const added = contexts.flatMap((context) => context(candidate, all));
  return candidate.scores
    .map((each) => {
      if (each.score === 0) return each;
      const own = added.filter(([role]) => role === each.role);
      const reasons = own.flatMap(([, points, reason]) =>
        points > 0 && reason !== "" ? [reason] : [],
      );
      return {
        role: each.role,
        score: Math.max(
          0,
          own.reduce((sum, [, points]) => sum + points, each.score),
        ),
        reasons: [...each.reasons, ...reasons],
      };
    })
    .sort((a, b) => b.score - a.score);
}

const repeats = new Set(roles.filter((role) => role.repeats).map(({ id }) => id));

/** The surest column gets its role first; a role that stands once is then gone for the others. */
function settle(
  all: readonly { candidate: Candidate; scores: RoleScore[] }[],
): Map<number, RoleScore> {
  const settled = new Map<number, RoleScore>();
  const taken = new Set<RoleId>();
  const pairs = all
    .flatMap(({ candidate, scores }) =>
      scores.map((score) => ({ column: candidate.column, score })),
    )
    .filter(({ score }) => score.score >= leastScore)
    .sort((a, b) => b.score.score - a.score.score);
  for (const { column, score } of pairs) {
    if (settled.has(column) || taken.has(score.role)) continue;
    settled.set(column, score);
    if (!repeats.has(score.role)) taken.add(score.role);
  }
  return settled;
}

const unused = (heading: string): RoleScore => ({
  role: "other",
  score: 0,
  reasons: [heading === "" ? "it has no heading" : "neither heading nor figures say what it is"],
});

const capped = (given: RoleScore): RoleScore => ({ ...given, score: Math.min(1, given.score) });

export function guessColumns(
  cells: SheetCells,
  place: TablePlace,
  commaIsDecimal: boolean,
): ColumnGuess[] {
  const candidates: Candidate[] = [];
  for (let column = place.firstColumn; column <= place.lastColumn; column += 1) {
    const heading = fullHeading(cells, place, column);
    const facts = columnFacts(cells, column, place.firstRow, place.lastRow, commaIsDecimal);
    if (heading === "" && facts.filled === 0) continue;
    const parts = headingParts(heading);
    const scores = roles.map((role) => score(role, heading, parts, facts));
    candidates.push({ column, heading, parts, facts, scores });
  }
  const all = candidates.map((candidate) => ({
    candidate,
    scores: withContext(candidate, candidates),
  }));
  const settled = settle(all);
  return all.map(({ candidate, scores }) => {
    const best = settled.get(candidate.column) ?? unused(candidate.heading);
    const others = scores.filter(({ role, score: s }) => role !== best.role && s > 0.2).slice(0, 4);
    return {
      ...capped(best),
      column: candidate.column,
      heading: candidate.heading,
      unit: unitFor(best.role, candidate),
      others: others.map(capped),
    };
  });
}

/** Parts of one, not of a hundred: 0.0197 for 1.97 %. A cell shown with % is scaled when it is read. */
const isFraction = (id: RoleId, { numbers, isPercentFormat }: ColumnFacts): boolean => {
  if (numbers.length === 0 || isPercentFormat) return false;
  if (id === "assay") return numbers.every((figure) => figure <= 1);
  return id === "ffa" && median(numbers) < 0.06 && numbers.every((figure) => figure < 0.4);
};

/** The unit the heading names if the role can be in it; else what the figures say; else the usual one. */
function unitFor(id: RoleId, { parts, facts }: Candidate): string | undefined {
  const role = roles.find((each) => each.id === id);
  const units: readonly string[] = role?.units ?? [];
  if (isFraction(id, facts)) return "fraction";
  if (parts.unit !== undefined && units.includes(parts.unit)) return parts.unit;
  if (id === "baseCharge") return median(facts.numbers) > 1.9 ? "g/L" : "%";
  if (id === "oilAmount" && /\bkg\b/.test(parts.words)) return "kg";
  return units[0];
}
