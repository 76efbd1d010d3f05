/**
 * A rough titration that no word calls so: read more coarsely than the titres beside it, and off from them; or
 * one try apart from titres that are numbered or called otherwise.
 */
import { type Candidate, sameWords } from "../context";
import { median } from "../numbers-of-column";
import { says } from "../words/speaks-for";

type Figures = readonly (number | undefined)[];

const leastRows = 4;
/** Two who read one burette differ by less. */
const readAlike = 0.1;

const filled = (figures: Figures): number[] => figures.flatMap((each) => each ?? []);
const digitsOf = (figures: Figures): number =>
  Math.max(0, ...filled(figures).map((each) => (String(each).split(".")[1] ?? "").length));

/** By how much two columns differ in most rows; undefined where too few rows tell. */
function apartBy(one: Figures, other: Figures): number | undefined {
  const apart = one.flatMap((value, at) => {
    const second = other[at];
    return value === undefined || second === undefined ? [] : [Math.abs(value - second)];
  });
  return apart.length < leastRows ? undefined : median(apart);
}

/** "Trial", "try": one of several, or the first look. */
const isTry = ({ parts }: Candidate): boolean =>
  says(parts.text, "repeat") && says(parts.text, "titre");

/** @param titres columns that are taken for titres: which of them are rough? */
export function roughTitres(
  titres: readonly Candidate[],
  figures: ReadonlyMap<number, Figures>,
): ReadonlySet<number> {
  const of = ({ column }: Candidate): Figures => figures.get(column) ?? [];
  const rough = titres.filter((own) => {
    const others = titres.filter((each) => each !== own && !isTry(each));
    if (titres.some((each) => sameWords(own, each)) || others.length === 0) return false;
    if (isTry(own) && own.parts.number === undefined) return true;
    return others.every((other) => {
      const apart = apartBy(of(own), of(other));
      return digitsOf(of(own)) < digitsOf(of(other)) && apart !== undefined && apart > readAlike;
    });
  });
  return new Set(rough.map(({ column }) => column));
}
