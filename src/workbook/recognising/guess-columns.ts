/**
 * Which column is which quantity: every role is scored for every column, then the table is looked at
 * as a whole, since "mL" twice is two titres and one of two "Oil" columns is the kind.
 */
import { fromCells, fromFormula, fromUnit, fromWords } from "./evidence";
import { type HeadingParts, headingParts, unitAlone } from "./heading";
import type { TablePlace } from "./find-tables";
import { type ColumnFacts, columnFacts, median } from "./numbers-of-column";
import { type Role, type RoleId, roles } from "./roles";
import { heldCell, type SheetCells } from "./sheet-cells";

export interface RoleScore {
  readonly role: RoleId;
  /** 0 to 1; above 0.8 hardly wrong, below 0.4 not used. */
  readonly score: number;
  readonly reasons: readonly string[];
}

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

interface Candidate {
  readonly column: number;
  readonly heading: string;
  readonly parts: HeadingParts;
  readonly facts: ColumnFacts;
  readonly scores: RoleScore[];
}

const textAt = (cells: SheetCells, row: number | undefined, column: number): string => {
  if (row === undefined) return "";
  const { value } = heldCell(cells, row, column);
  return typeof value === "object" ? "" : String(value).trim();
};

/** The words above a heading that is only a number or a unit: the nearest to the left in the row above. */
function groupWords(cells: SheetCells, place: TablePlace, column: number): string {
  for (let at = column; at >= place.firstColumn; at -= 1) {
    const words = textAt(cells, place.groupRow, at);
    if (words !== "") return words;
    if (!isBare(textAt(cells, place.headingRow, at))) return "";
  }
  return "";
}

const isBare = (heading: string): boolean =>
  /^(?:no\.?|run|rep|#)?\s*#?\d{1,2}$/i.test(heading) ||
  /^(?:i{1,3}|[abc])$/i.test(heading) ||
  heading === "";

export function fullHeading(cells: SheetCells, place: TablePlace, column: number): string {
  const own = textAt(cells, place.headingRow, column);
  const group = isBare(own) ? groupWords(cells, place, column) : "";
  const words = [group, own].filter((each) => each !== "").join(" ");
  const unit = textAt(cells, place.unitsRow, column);
  const isUnit =
    unit !== "" && unitAlone(unit) !== undefined && headingParts(words).unit === undefined;
  return isUnit ? `${words} (${unit.replace(/[()[\]]/g, "")})`.trim() : words;
}

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

/** Points that the table as a whole adds. */
type Context = (
  candidate: Candidate,
  all: readonly Candidate[],
) => readonly (readonly [RoleId, number, string])[];

const sameWords = (one: Candidate, other: Candidate): boolean =>
  one !== other && one.parts.words === other.parts.words && one.parts.unit === other.parts.unit;

const contexts: readonly Context[] = [
  // Numbered columns with the same words are replicates.
  (candidate, all) =>
    candidate.parts.number !== undefined &&
    all.some((each) => sameWords(candidate, each) && each.parts.number !== undefined)
      ? [
          ["titre", 0.25, "it is one of several numbered columns"],
          ["meanTitre", -0.2, ""],
          ["blank", -0.02, ""],
          ["lot", -0.5, ""],
          ["batch", -0.5, ""],
        ]
      : [],
  // A number after a heading that stands alone: V0 and B0 are blanks.
  ({ parts }) =>
    parts.number === 0 && /^(?:v|b|t|blank)?$/.test(parts.words)
      ? [
          ["blank", 0.7, "the number 0"],
          ["titre", -0.6, ""],
        ]
      : [],
  // A blank is small beside the titres.
  (candidate, all) => {
    const titres = all.filter(
      (each) =>
        each.parts.number !== undefined &&
        (each.scores.find((s) => s.role === "titre")?.score ?? 0) > 0.5,
    );
    const usual = median(titres.flatMap(({ facts }) => facts.numbers.slice(0, 20)));
    const own = median(candidate.facts.numbers);
    if (!Number.isFinite(usual) || !Number.isFinite(own)) return [];
    return own < usual / 3
      ? [["blank", 0.08, "figures small beside the titres"]]
      : [["blank", -0.25, ""]];
  },
  // Grams and millilitres of oil are a sample, not a batch.
  ({ parts }) => (parts.unit === "g" || parts.unit === "mL" ? [["oilAmount", -0.2, ""]] : []),
  // In a table that titrates, a bare "g" is the sample; in one that doses, it is the lye.
  (_, all) => {
    const has = (role: RoleId): boolean =>
      all.some((each) => (each.scores.find((s) => s.role === role)?.score ?? 0) > 0.75);
    const titrates = has("titre") || has("blank");
    const doses = has("oilAmount") || has("methanol") || has("assay") || has("oilMass");
    if (titrates && !doses)
      return [
        ["sampleMass", 0.12, ""],
        ["sampleVolume", 0.12, ""],
        ["catalyst", -0.25, ""],
        ["oilAmount", -0.25, ""],
        ["base", -0.1, ""],
        ["weighed", -0.1, ""],
        ["titrantBase", 0.12, ""],
      ];
    if (doses && !titrates)
      return [
        ["titre", -0.3, ""],
        ["sampleMass", -0.3, ""],
        ["sampleVolume", -0.3, ""],
        ["oilAmount", 0.1, ""],
        ["titrantBase", -0.2, ""],
      ];
    return [];
  },
];

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
  if (id === "assay") return Math.max(...numbers) <= 1;
  return id === "ffa" && median(numbers) < 0.06 && Math.max(...numbers) < 0.4;
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
