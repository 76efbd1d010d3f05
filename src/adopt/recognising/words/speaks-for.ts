/** How much a heading's words speak for a role. */
import type { RoleId } from "../roles";
import { elsewhere, modifiers, type Pattern, rolePatterns } from "./patterns";
import { meant, type Read, readWords } from "./read-words";
import type { Meant } from "./symbols";
import type { LanguageId } from "./terms";

interface Word {
  readonly meanings: readonly Meant[];
  readonly quality: number;
}

/** Words beside those that a role needs say that it is something else: by so much. */
const costs = { unknown: 0.12, unknownNoun: 0.4, other: 0.3, elsewhere: 0.9 } as const;

function costOf({ meanings }: Word, besides: ReadonlySet<Meant>, isNamed: boolean): number {
  if (meanings.some((each) => each === "filler" || besides.has(each))) return 0;
  if (meanings.length === 0) return isNamed ? costs.unknown : costs.unknownNoun;
  return meanings.every((each) => elsewhere.has(each)) ? costs.elsewhere : costs.other;
}

/** Each need is met by a word of its own; undefined where one is not. */
function leftBy(
  words: readonly Word[],
  needs: readonly Meant[],
): { left: Word[]; quality: number } | undefined {
  const left = [...words];
  let quality = 1;
  // the word with the fewest meanings first: "Titer" may be the titre or the strength
  for (const need of needs) {
    const fitting = left.filter(({ meanings }) => meanings.includes(need));
    const word = fitting.sort((a, b) => a.meanings.length - b.meanings.length)[0];
    if (!word) return undefined;
    quality = Math.min(quality, word.quality);
    left.splice(left.indexOf(word), 1);
  }
  return { left, quality };
}

function pointsOf(
  { needs, weight }: Pattern,
  words: readonly Word[],
  besides: ReadonlySet<Meant>,
): number {
  const met = leftBy(words, needs);
  if (!met) return 0;
  const isNamed = needs.some((need) => !modifiers.has(need));
  const cost = met.left.reduce((sum, word) => sum + costOf(word, besides, isNamed), 0);
  return Math.max(0, weight * met.quality - cost);
}

const wordsOf = (reads: readonly Read[], language: LanguageId | undefined): Word[] =>
  reads.map((read) => ({ meanings: meant(read, language), quality: read.quality }));

export function speaksFor(id: RoleId, text: string, language: LanguageId | undefined): number {
  const own = rolePatterns[id];
  if (!own) return 0;
  const words = wordsOf(readWords(text), language);
  return own.patterns.reduce((most, each) => Math.max(most, pointsOf(each, words, own.besides)), 0);
}

/** Does it name what is no role: a price, a limit, a smell? */
export const isElsewhere = (text: string, language: LanguageId | undefined): boolean =>
  wordsOf(readWords(text), language).some(
    ({ meanings }) => meanings.length > 0 && meanings.every((each) => elsewhere.has(each)),
  );

/** Does none of its words mean anything? */
export const isUnknown = (text: string): boolean =>
  readWords(text).every(({ meanings }) =>
    meanings.every(({ concept }) => concept === "filler" || modifiers.has(concept)),
  );

/** Is no word of it known, and is there one? */
export const isUnread = (text: string): boolean => {
  const words = readWords(text);
  return words.length > 0 && words.every(({ meanings }) => meanings.length === 0);
};

/** Is there a word in it that nobody knows? */
export const hasUnknown = (text: string): boolean =>
  readWords(text).some((read) => read.meanings.length === 0 && read.text.length > 3);

export const says = (text: string, concept: Meant, language?: LanguageId): boolean =>
  readWords(text).some((read) => meant(read, language).includes(concept));
