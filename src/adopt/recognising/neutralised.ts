/** What says in a blank's cell that the solvent took nothing. */
export const isNeutralised = (text: string): boolean =>
  /^(?:0+(?:[.,]0+)?|nil|neutrali[sz]ed)$/i.test(text.trim());
/** A word where a blank should stand, that says neither a figure nor that there is none: "none". */
export function blankWord(value: unknown): string {
  if (typeof value !== "string") return "";
  const word = value.trim();
  return /\d/.test(word) || !/\p{L}/u.test(word) || isNeutralised(word) || /^n\/?a\.?$/i.test(word)
    ? ""
    : word;
}
