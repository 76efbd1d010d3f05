/** Does a text name a sheet? Asked before a text is looked into, and of those that nobody knows. */

const escapeForPattern = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** In XML such a letter may be written in several ways. */
const isWrittenAsItIs = /^[\w .\-()+=#%]*$/;

export interface Mentions {
  /** The text of a part might name it. */
  inPart(text: string): boolean;
  inFormula(formula: string): boolean;
  /** It stands before an exclamation mark, as in a reference. */
  asReference(text: string): boolean;
}

/** @param others names that matter as well: those of tables */
export function mentionsOf(sheet: string, others: Iterable<string> = []): Mentions {
  const names = [sheet, ...others].map((name) => name.toLowerCase());
  const isPlain = names.every((name) => isWrittenAsItIs.test(name));
  const isIn = (text: string) => names.some((name) => text.includes(name));
  const quoted = escapeForPattern(sheet.replaceAll("'", "''"));
  const pattern = new RegExp(
    `(?:^|[^\\p{L}\\p{N}_.'\\]])${escapeForPattern(sheet)}!|'(?:[^'\\[\\]]*:)?${quoted}(?::[^'\\[\\]]*)?'!`,
    "iu",
  );
  return {
    inPart: (text) => !isPlain || isIn(text.toLowerCase()),
    inFormula: (formula) => isIn(formula.toLowerCase().replaceAll("''", "'")),
    asReference: (text) => text.includes("!") && pattern.test(text),
  };
}
