/** Which entries fit what is typed: every word must begin a word of the entry, in any spelling. */

const spellings: readonly (readonly [RegExp, string])[] = [
  [/titer/g, "titre"],
  [/liter/g, "litre"],
  [/ll?ize?/g, "lise"],
  [/ize/g, "ise"],
  [/izing/g, "ising"],
  [/glycerine?\b/g, "glycerol"],
  [/sulphur/g, "sulfur"],
  [/buret\b/g, "burette"],
  [/colou?r/g, "colour"],
  [/acid number/g, "acid value"],
];

/** Small letters, one spelling of words that have two. */
export const levelled = (said: string): string =>
  spellings.reduce((text, [from, to]) => text.replace(from, to), said.toLowerCase());

export interface Searched {
  readonly title: string;
  readonly says: string;
}

const begins = (text: string, word: string): boolean =>
  text.startsWith(word) || new RegExp(`[^a-z0-9]${word.replace(/[^a-z0-9]/g, "\\$&")}`).test(text);

/** Words of a question that say nothing of what is looked for. */
const unsaid = new Set(
  "a an the of to for in on is are do does did i my me we you it how much many what which where when why can should with and or".split(
    " ",
  ),
);

/** 0 where it does not fit; the larger, the better. Words in a title count most. */
export function fit({ title, says }: Searched, wanted: string): number {
  const all = levelled(wanted)
    .split(/[\s?!,.]+/)
    .filter(Boolean);
  const telling = all.filter((word) => !unsaid.has(word));
  const words = telling.length > 0 ? telling : all;
  const [head, body] = [levelled(title), levelled(says)];
  let sum = 0;
  for (const word of words) {
    if (head === word) sum += 30;
    else if (begins(head, word)) sum += 10;
    else if (begins(body, word)) sum += 1;
    else return 0;
  }
  return sum;
}
