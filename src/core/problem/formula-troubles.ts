/** What can make a formula's text unreadable, in words that stand after a colon. */
export const formulaTroubles = {
  empty: "there is nothing in it",
  "too-long": "it is longer than a cell can hold",
  "too-deep": "it is nested too deeply",
  "text-not-closed": "a text is opened there and not closed",
  "bracket-not-closed": "a bracket is opened there and not closed",
  "value-missing": "a value, a reference or a function should stand there",
  "operator-missing": "an operator or a comma should stand there",
  stray: "it does not belong there",
  unreadable: "it is not part of any formula",
  "not-a-reference": "a reference should stand there",
  "not-a-constant": "only figures, texts, TRUE, FALSE and errors may stand in braces",
  "uneven-rows": "the rows in braces differ in length",
  "number-too-large": "the number is too large",
} as const;

export type FormulaTrouble = keyof typeof formulaTroubles;
