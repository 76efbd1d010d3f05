/** Indicators by name: the colour that says stop, and what changes with those for dark oil. */
export interface Indicator {
  readonly name: string;
  /** "Colourless to pink". */
  readonly turns: string;
  /** The colour that must stay. */
  readonly to: string;
  /** Where it turns, by pH (commonly cited). */
  readonly at: string;
  /** ISO 660:2009, 9.3.3, asks for one of these where a fat is dark. */
  readonly isForDark: boolean;
}

export const indicators: readonly Indicator[] = [
  {
    name: "phenolphthalein",
    turns: "Colourless to pink",
    to: "pink",
    at: "8.2 to 10",
    isForDark: false,
  },
  {
    name: "thymolphthalein",
    turns: "Colourless to blue",
    to: "blue",
    at: "9.3 to 10.5",
    isForDark: true,
  },
  { name: "alkali blue", turns: "Blue to red", to: "red", at: "9.4 to 14", isForDark: true },
  {
    name: "turmeric",
    turns: "Yellow to red-brown",
    to: "red-brown",
    at: "about 8",
    isForDark: false,
  },
];

export const indicatorNamed = (name: string): Indicator | undefined =>
  indicators.find((each) => each.name === name.trim().toLowerCase());

/** "Colourless to blue, at pH 9.3 to 10.5 (commonly cited)." */
export const turnsInWords = ({ turns, at }: Indicator): string =>
  `${turns}, at pH ${at} (commonly cited).`;

/** What changes with an indicator for dark oil: a sentence each. Amounts: ISO 660:2009, 9.3.3. */
export const whenDark: readonly string[] = [
  "0.5 mL of it in 50 mL of alcohol is usual; very dark oil wants more of both (ISO 660).",
  "Neutralise the solvent with it, or titrate the blank with it: same amount, same colour. It turns later than phenolphthalein, and so takes more.",
];
