/** A word that no table holds, found by what it is near: misspelt, cut short, or joined from two. */
import { distance } from "fastest-levenshtein";
import { lexicon, longWords, phraseWords, type Meaning } from "./lexicon";
import { languages } from "./terms";

export interface Near {
  /** One for each part that the word is joined from; one without a meaning where only its end is known. */
  readonly parts: readonly (readonly Meaning[])[];
  /** 1: as it stands in the table. */
  readonly quality: number;
}

const sorted = (word: string): string => [...word].sort().join("");

/** Two letters changed round are one slip of the hand. */
function slips(one: string, other: string): number {
  const apart = distance(one, other);
  return apart === 2 && one.length === other.length && sorted(one) === sorted(other) ? 1 : apart;
}

const mostSlips = (length: number): number => (length >= 8 ? 2 : length >= 5 ? 1 : 0);

function misspelt(word: string): Near | undefined {
  const most = mostSlips(word.length);
  if (most === 0) return undefined;
  let least = most;
  let nearest: string[] = [];
  for (const known of longWords) {
    if (known[0] !== word[0] || Math.abs(known.length - word.length) > most) continue;
    const apart = slips(word, known);
    if (apart < least) [least, nearest] = [apart, [known]];
    else if (apart === least) nearest.push(known);
  }
  const meanings = nearest.flatMap((known) => lexicon.get(known) ?? []);
  return meanings.length === 0 ? undefined : { parts: [meanings], quality: 0.92 };
}

/** The one word of phrases that this is one slip from, where it is near to no other word. */
export function nearOfPhrases(word: string): string | undefined {
  if (word.length < 5 || lexicon.has(word) || phraseWords.includes(word)) return undefined;
  if (nearWord(word) !== undefined) return undefined;
  const near = phraseWords.filter((known) => known[0] === word[0] && slips(word, known) === 1);
  return near.length === 1 ? near[0] : undefined;
}

/** "titr", "purit": the beginning of words that all mean the same. */
function cutShort(word: string): Near | undefined {
  if (word.length < 3) return undefined;
  const longer = longWords.filter((known) => known.startsWith(word));
  const meanings = longer.flatMap((known) => lexicon.get(known) ?? []);
  const concepts = new Set(meanings.map(({ concept }) => concept));
  return concepts.size === 1 ? { parts: [meanings], quality: 0.9 } : undefined;
}

/** Letters between the parts of a joined word. */
const joints = ["", "s", "n", "en", "e", "es", "er"];
const leastPart = 3;
const shortParts = new Set(["ol", "ffs", "vvz"]);

const isPart = (word: string): boolean =>
  lexicon.has(word) && (word.length >= leastPart || shortParts.has(word));

/** Nobody joins an English word to a French one. */
const isOneLanguage = (parts: readonly (readonly Meaning[])[]): boolean =>
  languages.some((language) =>
    parts.every((meanings) => meanings.some((each) => each.languages.has(language))),
  );

/** "Probenmasse": known words that make up the whole. The longest first part is tried first. */
function joined(word: string, depth = 0): (readonly Meaning[])[] | undefined {
  if (isPart(word)) return [lexicon.get(word) ?? []];
  if (depth > 2) return undefined;
  for (let end = word.length - leastPart; end >= 2; end -= 1) {
    const first = word.slice(0, end);
    if (!isPart(first)) continue;
    for (const joint of joints) {
      if (!word.startsWith(joint, end)) continue;
      const rest = joined(word.slice(end + joint.length), depth + 1);
      const parts = rest && [lexicon.get(first) ?? [], ...rest];
      if (parts && isOneLanguage(parts)) return parts;
    }
  }
  return undefined;
}

/** "Bezinktijd": what a joined word ends in says what it is. */
function ending(word: string): Near | undefined {
  for (let from = 2; from <= word.length - 4; from += 1) {
    const meanings = lexicon.get(word.slice(from));
    if (meanings) return { parts: [[], meanings], quality: 0.85 };
  }
  return undefined;
}

/** Feminine, masculine, several: the same word. */
const endings = /(?:es|en|er|em|s|n|e|a|o|i|as|os)$/;

function inflected(word: string): Near | undefined {
  const bare = word.endsWith("s") ? lexicon.get(word.slice(0, -1)) : undefined;
  if (bare && word.length >= 3) return { parts: [bare], quality: 0.97 };
  const stem = word.replace(endings, "");
  if (stem.length < 4) return undefined;
  for (const end of ["", "e", "o", "a", "n", "s", "en", "es"]) {
    const meanings = lexicon.get(stem + end);
    if (meanings) return { parts: [meanings], quality: 0.97 };
  }
  return undefined;
}

const found = new Map<string, Near | undefined>();
const mostKept = 5000;

const longBeginning = 5;

function look(word: string): Near | undefined {
  const unfolded = word.replace(/([aou])e/g, "$1");
  if (unfolded !== word && lexicon.has(unfolded))
    return { parts: [lexicon.get(unfolded) ?? []], quality: 1 };
  const whole = inflected(word);
  if (whole) return whole;
  const parts = word.length >= 5 ? (joined(word) ?? joined(unfolded)) : undefined;
  if (parts) return { parts, quality: 0.97 };
  // five letters that all of a thing's words begin with say more than a slip of the hand
  const whatBegins = word.length >= longBeginning ? cutShort(word) : undefined;
  return whatBegins ?? misspelt(word) ?? cutShort(word) ?? ending(word);
}

export function nearWord(word: string): Near | undefined {
  if (!found.has(word)) {
    if (found.size > mostKept) found.clear();
    found.set(word, look(word));
  }
  return found.get(word);
}
