/** Which of several a heading is: "T2", "2nd titre", "ml KOH b". */
const ordinal: Readonly<Record<string, number>> = { first: 1, second: 2, third: 3, fourth: 4 };

export function numberOf(words: string): { number: number | undefined; rest: string } {
  const found =
    /(?:^|[\s#_-]|(?<=[a-gi-z])|(?<=h)(?!2o))#?(\d{1,2})(?:st|nd|rd|th|ª|º|°|e|er|re|a|o|\.)?(?=$|[\s)\].,;:_-])/i.exec(
      words,
    ) ?? undefined;
  if (found) {
    const rest = words.replace(found[0], " ");
    return { number: Number(found[1]), rest };
  }
  // "ml KOH a", "ml KOH b": one of several, as long as a word stands before it.
  const letter = /(?<=[a-z]{2}[\s._-]+\(?)([a-d])(?=\)?\s*$)/i.exec(words);
  if (letter) {
    const at = "abcd".indexOf((letter[1] ?? "").toLowerCase());
    return { number: at + 1, rest: words.slice(0, letter.index) };
  }
  const word = /\b(first|second|third|fourth)\b/i.exec(words);
  const number = word ? ordinal[(word[1] ?? "").toLowerCase()] : undefined;
  return { number, rest: word ? words.replace(word[0], " ") : words };
}
