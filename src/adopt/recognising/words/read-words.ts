/** The words of a heading, each with what it may mean. */
import {
  anyOrder,
  fold,
  lexicon,
  orderless,
  longestPhrase,
  type Meaning,
  tokensOf,
} from "./lexicon";
import { nearOfPhrases, nearWord } from "./near-word";
import { letters, type Meant, symbols } from "./symbols";
import { type LanguageId, languages } from "./terms";

export interface Read {
  readonly text: string;
  /** Empty where nobody knows the word. */
  readonly meanings: readonly {
    readonly concept: Meant;
    readonly languages?: ReadonlySet<LanguageId>;
  }[];
  readonly quality: number;
}

const exactly = (text: string, meanings: readonly Meaning[]): Read => ({
  text,
  meanings,
  quality: 1,
});

function readToken(token: string): Read[] {
  const known = lexicon.get(token);
  const letter = letters[token] ?? [];
  if (known || letter.length > 0)
    return [
      {
        text: token,
        meanings: [...(known ?? []), ...letter.map((concept) => ({ concept }))],
        quality: 1,
      },
    ];
  const near = nearWord(token);
  if (!near) return [{ text: token, meanings: [], quality: 1 }];
  return near.parts.map((meanings) => ({ text: token, meanings, quality: near.quality }));
}

/** "V - V0", "dV": a heading that is one symbol. */
function symbolOf(text: string): Read | undefined {
  const plain = text
    .toLowerCase()
    .replace(/[\s._,;:()[\]]/g, "")
    .replace(/[–−]/g, "-");
  const meant = symbols[plain] ?? symbols[fold(plain).trim()];
  return meant && { text, meanings: meant.map((concept) => ({ concept })), quality: 1 };
}

export const isSymbol = (text: string): boolean => symbolOf(text) !== undefined;

const kept = new Map<string, readonly Read[]>();
const mostKept = 2000;

/** Capitals, or points between, are an acid value; a point behind shortens "average": "Av." is no "AV". */
const spelledOut = (text: string): string =>
  text
    .replace(/(?<![\p{L}])(?:AV(?!\.)|[Aa]\.\s?[Vv]\b\.?)(?![\p{L}])/gu, " acidvalue ")
    .replace(/(?<![\p{L}])(?:Av|av)\.(?![\p{L}])/gu, " average ")
    .replace(/(?<=(?<![\p{L}])\p{L})\.(?=\p{L}(?![\p{L}]))/gu, "")
    .replace(/(?<=[\s\p{L}).])\s[-–−]\s|\s[-–−](?=\p{L})/gu, " minus ");

/** A word of a phrase with one slip in it: "alcoohl only". */
const mended = (tokens: readonly string[]): string[] =>
  tokens.map((token) => nearOfPhrases(token) ?? token);

/** As the table has it, in whichever order its words stand: "freie Fettsäuren", "Fettsäuren frei". */
function phraseOf(tokens: readonly string[]): string | undefined {
  const written = tokens.join(" ");
  if (lexicon.has(written)) return written;
  return tokens.length > 1 ? anyOrder.get(orderless(tokens)) : undefined;
}

function look(text: string): Read[] {
  const symbol = symbolOf(text);
  if (symbol) return [symbol];
  const tokens = mended(tokensOf(spelledOut(text)));
  const read: Read[] = [];
  for (let at = 0; at < tokens.length;) {
    let length = Math.min(longestPhrase, tokens.length - at);
    while (length > 1 && phraseOf(tokens.slice(at, at + length)) === undefined) length -= 1;
    const some = tokens.slice(at, at + length);
    const phrase = phraseOf(some) ?? some.join(" ");
    read.push(...(length > 1 ? [exactly(phrase, lexicon.get(phrase) ?? [])] : readToken(phrase)));
    at += length;
  }
  return read;
}

export function readWords(text: string): readonly Read[] {
  const known = kept.get(text);
  if (known) return known;
  const read = look(text);
  if (kept.size > mostKept) kept.clear();
  kept.set(text, read);
  return read;
}

/** Which language most of these headings speak; English where nothing tells. */
export function languageOf(headings: readonly string[]): LanguageId {
  const points = new Map<LanguageId, number>(languages.map((language) => [language, 0]));
  for (const heading of headings)
    for (const { meanings, quality } of readWords(heading)) {
      const where = new Set(meanings.flatMap((each) => [...(each.languages ?? [])]));
      for (const language of where)
        points.set(language, (points.get(language) ?? 0) + quality / where.size);
    }
  let best: LanguageId = "en";
  for (const language of languages)
    if ((points.get(language) ?? 0) > (points.get(best) ?? 0)) best = language;
  return best;
}

/** What a word may mean in one language; in all where it is no word of that one. */
export function meant({ meanings }: Read, language: LanguageId | undefined): readonly Meant[] {
  const own = meanings.filter(
    (each) =>
      each.languages === undefined || language === undefined || each.languages.has(language),
  );
  return (own.length > 0 ? own : meanings).map(({ concept }) => concept);
}
