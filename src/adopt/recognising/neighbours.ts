/**
 * What the figures of a column, and the columns beside it, say against what its heading seems to be: a
 * running number is no reading, ten grams are no batch, a unit alone is the oil before it is the methanol.
 */
import type { Candidate, Context } from "./context";
import { median } from "./numbers-of-column";
import { type RoleId, roles } from "./roles";

const leastRows = 3;

/** 1, 2, 3: each one more than the one above. */
function isRunning({ facts: { numbers, filled } }: Candidate): boolean {
  return (
    numbers.length >= leastRows &&
    numbers.length === filled &&
    numbers.every(
      (each, at) => Number.isInteger(each) && each === (numbers[at - 1] ?? each - 1) + 1,
    )
  );
}

const readings: readonly RoleId[] = roles
  .filter(({ id, holds }) => holds === "number" && id !== "number")
  .map(({ id }) => id);

/** Rows are numbered upwards, with few gaps; what jumps is a total. */
function isNoNumbering({ facts: { numbers, filled } }: Candidate): boolean {
  const steps = numbers.slice(1).map((each, at) => Math.abs(each - (numbers[at] ?? each)));
  return (
    numbers.length >= leastRows &&
    numbers.length === filled &&
    (median(steps) > 2 || !numbers.every(Number.isInteger))
  );
}

/** Less methanol than this part of the oil makes nothing. */
const leastMethanol = 0.02;

/** Nobody makes a batch of less than what is titrated. */
const mostTitrated = 60;

const bulk = new Set([
  "L",
  "US gal",
  "imp gal",
  "gal",
  "quart",
  "US quart",
  "imp quart",
  "kg",
  "lb",
]);

const isSmall = ({ parts, facts }: Candidate): boolean =>
  (parts.unit === "g" || parts.unit === "mL") && median(facts.numbers) <= mostTitrated;

const hasGrams = (each: Candidate): boolean => each.parts.unit === "g" && isSmall(each);

/** What comes out of a batch is most of its oil; methanol goes in as a part of it. */
const leastFuel = 0.4;
const mostMethanol = 1.2;
/** A hand on the scale is off by less. */
const weighedBeside = 2;

const surest = (all: readonly Candidate[], but: Candidate, role: RoleId): Candidate | undefined =>
  all.find(
    (each) => each !== but && each.scores.some((own) => own.role === role && own.score > 0.75),
  );

/** How many times the other: of the same unit, or where nothing is said. */
function timesThe(other: Candidate | undefined, own: Candidate): number | undefined {
  if (!other || (own.parts.unit ?? other.parts.unit) !== (other.parts.unit ?? own.parts.unit))
    return undefined;
  const times = median(own.facts.numbers) / median(other.facts.numbers);
  return Number.isFinite(times) ? times : undefined;
}

const isTitre = ({ parts, scores }: Candidate): boolean =>
  !parts.isUnitAlone &&
  scores.some(({ role, score }) => role === "titre" && score > 0.5) &&
  !scores.some(({ role, score }) => role === "meanTitre" && score > 0.8);

const isSample = ({ parts, scores }: Candidate): boolean =>
  !parts.isUnitAlone && scores.some(({ role, score }) => role === "sampleVolume" && score > 0.75);

export const neighbours: readonly Context[] = [
  (candidate) => (isRunning(candidate) ? readings.map((role) => [role, -0.9, ""] as const) : []),
  // What fits in a beaker is the sample.
  (candidate) =>
    isSmall(candidate)
      ? [
          ["oilAmount", -0.6, ""],
          ["sampleMass", 0.05, ""],
        ]
      : [],
  (candidate) => (isNoNumbering(candidate) ? [["number", -0.6, ""]] : []),
  // Drops of alcohol are what is titrated in, not what a batch takes.
  (candidate, all) => {
    const oils = all.filter(({ scores }) =>
      scores.some(({ role, score }) => role === "oilAmount" && score > 0.6),
    );
    const [oil] = oils.filter((each) => each !== candidate);
    const isLittle =
      oil && median(candidate.facts.numbers) < leastMethanol * median(oil.facts.numbers);
    const isInDrops = isSmall(candidate) && all.some(isTitre);
    return isLittle === true || isInDrops ? [["methanol", -0.8, ""]] : [];
  },
  (candidate, all) => {
    const ofOil = timesThe(surest(all, candidate, "oilAmount"), candidate);
    if (ofOil === undefined) return [];
    return ofOil < leastFuel
      ? [["litresMade", -0.6, ""]]
      : ofOil > mostMethanol
        ? [["methanol", -0.5, ""]]
        : [];
  },
  // A burette holds no kilograms.
  ({ parts }) => (parts.unit === "g" || parts.unit === "kg" ? [["titre", -0.6, ""]] : []),
  // A scale does not read in whole grams where it is said how finely it does.
  ({ facts }) =>
    median(facts.numbers) > 1
      ? [
          ["massStep", -2, ""],
          ["titreStep", -2, ""],
        ]
      : [],
  // What was weighed is near what was worked out.
  (candidate, all) => {
    const of = timesThe(surest(all, candidate, "catalyst"), candidate) ?? 1;
    return of > weighedBeside || of < 1 / weighedBeside ? [["weighed", -0.6, ""]] : [];
  },
  // A unit alone: litres and kilograms are first of all those of the oil.
  ({ parts }) =>
    parts.isUnitAlone && bulk.has(parts.unit ?? "")
      ? [
          ["methanol", -0.4, ""],
          ["litresMade", -0.4, ""],
          ["weighed", -0.4, ""],
          ["oilAmount", 0.15, ""],
        ]
      : [],
  // "mL" alone beside grams, where nothing else is the titre.
  (candidate, all) => {
    const { parts } = candidate;
    const isVolume = parts.isUnitAlone || /^vol(?:umen?)?$/.test(parts.words);
    const isLone = isVolume && parts.unit === "mL";
    const others = all.filter((each) => each !== candidate && !isRunning(each));
    return isLone &&
      others.some((each) => hasGrams(each) || isSample(each)) &&
      !others.some(isTitre)
      ? [
          ["titre", 0.2, "no other column is the titre"],
          ["sampleVolume", -0.3, ""],
        ]
      : [];
  },
];
