/**
 * What the words in the cells say of their column: phenolphthalein is an indicator and KOH a base, whatever
 * stands above; marks that each row has for itself are no kind of oil and nobody's name.
 */
import type { Candidate, Context } from "../context";
import { type RoleId, roles } from "../roles";
import { isBaseWord } from "./named-things";

/** Common practice, no source. */
const indicators =
  /ph?[eé]nol|fenol|turmeric|c[uú]rcum|kurkum|thymol|timol|litmus|lackmus|lakmoes|tornasol|ph.?met|cabbage/i;

const mostly = 0.6;
const leastRows = 3;

const named: readonly RoleId[] = roles
  .filter(({ id, holds }) => (holds === "text" && id !== "note") || id === "lot" || id === "batch")
  .map(({ id }) => id);
const ofKinds: readonly RoleId[] = ["oil", "operator", "stage", "indicator", "route"];

const less = (some: readonly RoleId[], but: readonly RoleId[], by: number) =>
  some.filter((role) => !but.includes(role)).map((role) => [role, -by, ""] as const);

function shareOf({ facts: { texts, filled } }: Candidate, is: (text: string) => boolean): number {
  if (filled < leastRows || texts.length < mostly * filled) return 0;
  return texts.filter(is).length / filled;
}

const hasDigit = /\d/;
/** "NQ41": no words that tell of anything. */
const mark = /^\p{L}{1,4}[-\s/.]?\d{1,6}$/u;

const byIndicators: Context = (candidate) =>
  shareOf(candidate, (text) => indicators.test(text)) > mostly
    ? [["indicator", 0.3, "the cells name indicators"], ...less(named, ["indicator"], 0.6)]
    : [];

/** A logbook knows few bases. */
const mostBases = 4;

export const isOfBases = (candidate: Candidate): boolean =>
  candidate.facts.different <= mostBases && shareOf(candidate, isBaseWord) > mostly;

const byBases: Context = (candidate) =>
  isOfBases(candidate) ? less(named, ["titrantBase", "base", "lyeLot", "indicator"], 0.6) : [];

const byMarks: Context = (candidate) => {
  const { filled, different } = candidate.facts;
  const isOwn = different > 0.8 * filled;
  if (isOwn && shareOf(candidate, (text) => mark.test(text)) > 0.8)
    return less([...ofKinds, "note"], [], 0.5);
  return isOwn && shareOf(candidate, (text) => hasDigit.test(text)) > 0.8
    ? less(ofKinds, [], 0.5)
    : [];
};

export const saidByCells: readonly Context[] = [byIndicators, byBases, byMarks];
