/** Where a key goes to in a list of words; undefined where the key means nothing to it. */
export function keyTo(key: string, at: number, words: readonly string[]): number | undefined {
  const last = words.length - 1;
  switch (key) {
    case "ArrowDown":
      return Math.min(last, at + 1);
    case "ArrowUp":
      return Math.max(0, at - 1);
    case "Home":
      return 0;
    case "End":
      return last;
  }
  if ([...key].length !== 1) return undefined;
  const begins = (word: string): boolean => word.toLowerCase().startsWith(key.toLowerCase());
  // the next that begins so, round again
  const next = words.findIndex((word, index) => index > at && begins(word));
  const first = next >= 0 ? next : words.findIndex(begins);
  return first >= 0 ? first : undefined;
}
