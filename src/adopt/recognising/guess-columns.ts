/**
 * Which column is which quantity: every role is scored for every column, then the table is looked at
 * as a whole, since "mL" twice is two titres and one of two "Oil" columns is the kind.
 */
import { type Basis, basisNamed, hasBasis } from "./basis";
import { fromCells, fromFormula, fromUnit, fromWords } from "./evidence";
import { type Candidate, contexts, type RoleScore, sameWords } from "./context";
import { fromShape, noShape } from "./judging/from-shape";
import { inTitration } from "./judging/in-titration";
import { doseSums } from "./judging/dose-sums";
import { namedThings } from "./judging/named-things";
import { saidByCells } from "./judging/said-by-cells";
import { unnamed } from "./judging/unnamed";
import { neighbours } from "./neighbours";
import { figuresOf } from "./judging/follows";
import { judged } from "./judging/judged";
import { lyePerLitre } from "./judging/lye-per-litre";
import { noSurer, noSurerThanIsFitting } from "./sure";
import { fullHeading } from "./full-heading";
import { type HeadingParts, headingParts } from "./heading";
import type { TablePlace } from "./find-tables";
import { type ColumnFacts, columnFacts } from "./numbers-of-column";
import { type Role, type RoleId, roles } from "./roles";
import type { SheetCells } from "./sheet-cells";
import { isElsewhere, isUnknown } from "./words/speaks-for";
import { languageOf } from "./words/read-words";
import type { LanguageId } from "./words/terms";
import type { Commas } from "./typed-number";
import { noUnit, unitsInTable } from "./measures/units-in-table";

export interface ColumnGuess extends RoleScore {
  readonly column: number;
  /** As it stands on the sheet, group and unit added: "Titres 1 (mL)". */
  readonly heading: string;
  readonly unit: string | undefined;
  /** Of grams of lye: what the heading says they are. */
  readonly basis?: Basis | undefined;
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
  language: LanguageId,
  isOneOfSeveral: boolean,
): RoleScore {
  const words = fromWords(role.id, parts, heading, language);
  const shape = isUnknown(parts.text) ? fromShape(role.id, facts, isOneOfSeveral) : noShape;
  const isNone = words.points === 0 && isElsewhere(parts.text, language);
  const unit = fromUnit(role, parts);
  const cells = fromCells(role, parts, facts);
  const formula = fromFormula(role, facts);
  // Cells alone never make a role, unless they are dates or the unit says it all.
  const isGrounded =
    words.points > 0 ||
    unit.points >= 0.4 ||
    formula.points >= 0.3 ||
    cells.points >= 0.45 ||
    shape.points > 0;
  const all = [words, unit, cells, formula, shape];
  const sum = all.reduce((total, { points }) => total + points, 0);
  const reasons = all.map(({ reason }) => reason).filter((reason) => reason !== "");
  return { role: role.id, score: isGrounded && !isNone ? Math.max(0, sum) : 0, reasons };
}

function withContext(candidate: Candidate, all: readonly Candidate[]): RoleScore[] {
  const added = [
    ...contexts,
    ...neighbours,
    ...namedThings,
    ...saidByCells,
    ...inTitration,
  ].flatMap((context) => context(candidate, all));
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

const capped = <T extends RoleScore>(given: T): T => ({
  ...given,
  score: Math.min(1, given.score),
});

/** Our own functions take a charge as pure base. */
const takesPure = /TITRE[._](?:CATALYST|DOSE|BATCH)\w*\(/i;

function basisFor(
  role: RoleId,
  { heading }: Candidate,
  all: readonly Candidate[],
): { basis?: Basis } {
  if (!hasBasis(role)) return {};
  const isOurs = role === "baseCharge" && all.some(({ facts }) => takesPure.test(facts.formula));
  const basis = basisNamed(heading) ?? (isOurs ? "pure" : undefined);
  return basis === undefined ? {} : { basis };
}

export function guessColumns(cells: SheetCells, place: TablePlace, commas: Commas): ColumnGuess[] {
  const columns: Omit<Candidate, "scores">[] = [];
  const headings: string[] = [];
  for (let column = place.firstColumn; column <= place.lastColumn; column += 1)
    headings.push(headingParts(fullHeading(cells, place, column)).text);
  const language = languageOf(headings);
  for (let column = place.firstColumn; column <= place.lastColumn; column += 1) {
    const heading = fullHeading(cells, place, column);
    const facts = columnFacts(cells, column, place.firstRow, place.lastRow, commas);
    // where lots stand across, a word without figures beside it is the title of the sheet
    if (facts.filled === 0 && (heading === "" || cells.isAcross === true)) continue;
    const parts = headingParts(heading);
    columns.push({ column, heading, parts, facts });
  }
  const candidates = columns.map((each): Candidate => {
    const { heading, parts, facts } = each;
    const isOneOfSeveral =
      parts.number !== undefined && columns.filter((other) => sameWords(each, other)).length > 0;
    const scores = roles.map((role) =>
      score(role, heading, parts, facts, language, isOneOfSeveral),
    );
    return { ...each, scores };
  });
  const first = candidates.map((candidate) => ({
    candidate,
    scores: withContext(candidate, candidates),
  }));
  const figures = new Map(
    candidates.map(({ column }) => [column, figuresOf(cells, place, column, commas)]),
  );
  const told = unnamed(first, settle(first), figures);
  const summed = doseSums(told, settle(told), figures);
  const followed = judged(summed, settle(summed), figures);
  const all = lyePerLitre(followed, settle(followed), figures);
  const settled = settle(all);
  const units = unitsInTable(all, settled);
  return all.map(({ candidate, scores }) => {
    const own = settled.get(candidate.column) ?? unused(candidate.heading);
    const { unit, isDoubtful } = units.get(candidate.column) ?? noUnit;
    const best = isDoubtful ? noSurer(own) : own;
    const others = scores.filter(({ role, score: s }) => role !== best.role && s > 0.2).slice(0, 4);
    return {
      ...capped(noSurerThanIsFitting({ candidate, scores, best }, all, settled)),
      column: candidate.column,
      heading: candidate.heading,
      unit,
      ...basisFor(best.role, candidate, candidates),
      others: others.map(capped),
    };
  });
}
