/** The columns that can be added to a logbook: what each is called, shown in, and worked out from. */
export type AddedId =
  "correctedTitre" | "acidValue" | "ffa" | "ffaUncertainty" | "verdict" | "catalyst" | "methanol";

export interface Added {
  readonly id: AddedId;
  /** Without its unit. */
  readonly words: string;
  readonly unit: string;
  readonly format: string;
  /** Width in characters. */
  readonly width: number;
  /** It needs the spread of replicates, which no short plain formula gives. */
  readonly onlyAsFunction?: boolean;
}

export const addedColumns: readonly Added[] = [
  { id: "correctedTitre", words: "Corrected titre", unit: "mL", format: "0.000", width: 12 },
  { id: "acidValue", words: "Acid value", unit: "mg KOH/g", format: "0.00", width: 12 },
  { id: "ffa", words: "FFA as oleic", unit: "%", format: "0.00", width: 12 },
  {
    id: "ffaUncertainty",
    words: "± FFA",
    unit: "%",
    format: "0.00",
    width: 10,
    onlyAsFunction: true,
  },
  { id: "verdict", words: "Verdict", unit: "", format: "General", width: 50, onlyAsFunction: true },
  { id: "catalyst", words: "Lye to weigh", unit: "g", format: "0", width: 12 },
  { id: "methanol", words: "Methanol to add", unit: "L", format: "0.0", width: 12 },
];

/** "FFA as oleic, %" */
export const headingOf = ({ words, unit }: Pick<Added, "words" | "unit">): string =>
  unit === "" ? words : `${words}, ${unit}`;
