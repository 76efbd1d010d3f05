/** Columns of words, and of marks, under a heading of which no word is known. */
import { isBaseWord, isOfOils } from "./named-things";
import { type KnownTable, readOf } from "./known-table";
import type { Rule } from "./unnamed-titration";

const leastRows = 4;
const mark = /^(\p{L}{1,4})[-\s/.]?\d{1,6}$/u;

const titrates = (t: KnownTable): boolean => readOf(t) !== undefined || t.has("correctedTitre");
const doses = (t: KnownTable): boolean =>
  (["oilAmount", "oilMass", "catalyst", "methanol"] as const).some((role) => t.has(role));

/** "NQ11", "SW12": marks of several series, as oil comes in; batches are numbered in one. */
const lot: Rule = ({ candidate: { facts } }, t) => {
  const series = facts.texts.map((text) => mark.exec(text)?.[1]);
  const isOfMarks =
    facts.filled >= leastRows &&
    series.length === facts.filled &&
    series.every((each) => each !== undefined) &&
    facts.different > 0.8 * facts.filled;
  return isOfMarks && !t.has("lot") && new Set(series).size > 1 ? ["lot"] : [];
};

const oil: Rule = ({ candidate }, t) => {
  const { facts } = candidate;
  const isOfWords = facts.filled >= leastRows && facts.texts.length === facts.filled;
  return isOfWords && !t.has("oil") && isOfOils(candidate) ? ["oil"] : [];
};

/** A base in each row: that of the burette where nothing is dosed, that of the batch where nothing is titrated. */
const base: Rule = ({ candidate: { facts } }, t) => {
  const isOfBases =
    facts.filled >= leastRows &&
    facts.texts.length === facts.filled &&
    facts.texts.every((text) => isBaseWord(text));
  if (!isOfBases) return [];
  const isTitrant = t.has("base") || (titrates(t) && !doses(t));
  const isCatalyst = t.has("titrantBase") || (doses(t) && !titrates(t));
  if (isTitrant === isCatalyst) return [];
  return isTitrant ? ["titrantBase"] : ["base"];
};

export const wordRules: readonly Rule[] = [lot, oil, base];
