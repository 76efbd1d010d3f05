/** What the table as a whole says about one of its columns. */
import { distance } from "fastest-levenshtein";
import { addedColumns, headingOf } from "../added-columns/added";
import { containerIn } from "./written-units";
import type { HeadingParts } from "./heading";
import { type ColumnFacts, median } from "./numbers-of-column";
import type { RoleId } from "./roles";
import { says } from "./words/speaks-for";

/** How much speaks for a role, and what. */
export interface RoleScore {
  readonly role: RoleId;
  /** 0 to 1; above 0.8 hardly wrong, below 0.4 not used. */
  readonly score: number;
  readonly reasons: readonly string[];
  /** It was tried whether the figures follow from the others, and they do not. */
  readonly fails?: true;
}

export interface Candidate {
  readonly column: number;
  readonly heading: string;
  readonly parts: HeadingParts;
  readonly facts: ColumnFacts;
  readonly scores: RoleScore[];
}

/** Points that the table as a whole adds. */
export type Context = (
  candidate: Candidate,
  all: readonly Candidate[],
) => readonly (readonly [RoleId, number, string])[];

/** "Burette 1", "Bureette 2": one heading, with a slip of the hand. */
const isOneSlip = (one: string, other: string): boolean =>
  one.length > 5 && one[0] === other[0] && distance(one, other) === 1;

export const sameWords = (
  one: Pick<Candidate, "parts">,
  other: Pick<Candidate, "parts">,
): boolean =>
  one !== other &&
  one.parts.unit === other.parts.unit &&
  (one.parts.words === other.parts.words || isOneSlip(one.parts.words, other.parts.words));

/** Added by this program beside the owner's own columns. */
const ourHeadings = new Set(addedColumns.map(headingOf));
const isOurs = ({ heading, facts }: Candidate): boolean =>
  facts.formula !== "" && ourHeadings.has(heading);

const results: readonly RoleId[] = [
  "acidValue",
  "ffa",
  "acidDose",
  "reactionDose",
  "catalyst",
  "catalystRate",
];

const scoreOf = (candidate: Candidate, role: RoleId): number =>
  candidate.scores.find((each) => each.role === role)?.score ?? 0;

export const contexts: readonly Context[] = [
  // A column of ours stands back where the owner has one of its kind: theirs is to be checked.
  (candidate, all) => {
    if (!isOurs(candidate)) return [];
    return candidate.scores
      .filter(({ role }) => all.some((each) => !isOurs(each) && scoreOf(each, role) > 0.5))
      .map(({ role }) => [role, -3, ""] as const);
  },
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
  // Beside several numbered titres, one without a number is a mean, a trial or what is left.
  (candidate, all) => {
    const numbered = all.filter(
      (each) => each.parts.number !== undefined && scoreOf(each, "titre") > 0.5,
    );
    const isBeside = numbered.length >= 2 && !numbered.some((each) => sameWords(candidate, each));
    return candidate.parts.number === undefined && isBeside ? [["titre", -0.45, ""]] : [];
  },
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
  // Oil that nothing says is weighed is an amount in a unit still to be asked for.
  ({ parts, facts }) =>
    parts.unit === "kg" || facts.formula !== "" || says(parts.text, "mass")
      ? []
      : [
          ["oilMass", -0.4, ""],
          ["oilAmount", 0.15, ""],
        ],
  // Containers that are counted are an amount; each with a number of its own, they are lots.
  ({ heading, facts }, all) => {
    const { numbers, filled, different } = facts;
    const isCounted =
      containerIn(heading) !== "" &&
      filled > 1 &&
      numbers.length === filled &&
      numbers.every((each) => each > 0 && each < 100) &&
      (different < filled || numbers.some((each) => !Number.isInteger(each)));
    const isOther = all.some(
      (each) => each.heading !== heading && scoreOf(each, "oilAmount") > 0.75,
    );
    return isCounted && !isOther
      ? [
          ["oilAmount", 0.55, "containers that are counted"],
          ["lot", -0.7, ""],
        ]
      : [];
  },
  // A heading that names the acid is of no water: "Wanted FFA" is near to it by its letters alone.
  ({ parts }) =>
    says(parts.text, "ffa") || says(parts.text, "acid") ? [["waterContent", -1, ""]] : [],
  // What is worked out differs from row to row where the readings do.
  ({ facts }, all) => {
    const varies = all.some(
      (each) => scoreOf(each, "titre") > 0.5 && each.facts.different >= each.facts.filled / 2,
    );
    const isSteady = facts.filled >= 4 && facts.different === 1 && facts.numbers.length > 0;
    return varies && isSteady ? results.map((role) => [role, -0.5, ""] as const) : [];
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
        ["weighed", -0.4, ""],
        ["methanol", -0.6, ""],
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
