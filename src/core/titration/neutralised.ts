/** The word that stands where a blank would: the solvent was neutralised beforehand. */
export const neutralisedWord = "neutralised";

/** What the word may be spelt like. */
export const neutralisedWords: readonly string[] = [neutralisedWord, "neutralized"];
