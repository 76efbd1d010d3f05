/** The table of words looked up: folded, by phrase, with the languages in which it means what. */
import { type Concept, type LanguageId, languages, terms } from "./terms";

export interface Meaning {
  readonly concept: Concept;
  readonly languages: ReadonlySet<LanguageId>;
}

/** Lower case, without accents: "Säurezahl" and "saurezahl" are one word. */
export const fold = (text: string): string =>
  text
    .replace(/ø/gi, (found) => (found === "Ø" ? " ø " : "o"))
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/œ/g, "oe");

/** Words and the signs that say something by themselves. */
export const tokensOf = (text: string): string[] =>
  fold(text).match(/[\p{L}]+\d*[\p{L}]*|[#$£€øσ∑⌀]/gu) ?? [];

const made = new Map<string, Map<Concept, Set<LanguageId>>>();
for (const [concept, ...columns] of terms)
  columns.forEach((words, at) => {
    for (const word of words.split("|")) {
      const key = tokensOf(word).join(" ");
      const known = made.get(key) ?? new Map<Concept, Set<LanguageId>>();
      const where = known.get(concept) ?? new Set<LanguageId>();
      where.add(languages[at] ?? "en");
      known.set(concept, where);
      made.set(key, known);
    }
  });

export const lexicon: ReadonlyMap<string, readonly Meaning[]> = new Map(
  [...made].map(([key, meanings]) => [
    key,
    [...meanings].map(([concept, where]) => ({ concept, languages: where })),
  ]),
);

/** The endings of a word that is declined: "freie", "freier" and "frei" are one. */
const stem = (token: string): string =>
  token.length > 4 ? token.replace(/(?:e[nrsm]?|s)$/, "") : token;
export const orderless = (tokens: readonly string[]): string => tokens.map(stem).sort().join(" ");

/** What is said before another word is not said of what stands before it: "blank without oil". */
const pointsOnwards = (key: string): boolean =>
  key
    .split(" ")
    .some((word) => lexicon.get(word)?.some(({ concept }) => directed.has(concept)) === true);
const directed: ReadonlySet<Concept> = new Set([
  "minus",
  "for",
  "by",
  "only",
  // "de base" is a standard, "base de titrage" a base
  "filler",
] as const);

/** Phrases found whatever their order. */
export const anyOrder: ReadonlyMap<string, string> = new Map(
  [...lexicon.keys()]
    .filter((key) => key.includes(" ") && !pointsOnwards(key))
    .map((key) => [orderless(key.split(" ")), key]),
);

export const longestPhrase = Math.max(...[...lexicon.keys()].map((key) => key.split(" ").length));

/** Words that may be misspelt, cut short or joined: single ones that are long enough. */
export const longWords: readonly string[] = [...lexicon.keys()].filter(
  (key) => key.length >= 5 && !key.includes(" "),
);

/** Words that stand in phrases alone, long enough to be misspelt. */
export const phraseWords: readonly string[] = [
  ...new Set(
    [...lexicon.keys()].filter((key) => key.includes(" ")).flatMap((key) => key.split(" ")),
  ),
].filter((word) => word.length >= 5);
