/** The arithmetic of the bench in doubles, written without a look at the core. */

/** g/mol, added up by hand from the conventional atomic weights. */
const molarMass = { KOH: 56.1053, NaOH: 39.99676928 } as const;
export type BaseByHand = keyof typeof molarMass;

/** g/mol of the acid value's definition (ISO 660), and of oleic acid as laboratories round it. */
const [definition, oleic] = [56.1, 282];
/** kg/L at 20 C of an oil that has no better figure (common practice, no source). */
const litre = 0.915;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;

export interface Bench {
  readonly molarity: number;
  readonly titres: readonly number[];
  /** None: the solvent was neutralised. */
  readonly blanks: readonly number[];
  /** One for each titre. */
  readonly masses: readonly number[];
}

export interface Acid {
  readonly corrected: number;
  readonly acidValue: number;
  readonly ffa: number;
  /** No titre is acid beyond all reason: up to 400 mg KOH/g and 100 % FFA, each by itself. */
  readonly isPlausible: boolean;
}

/** Undefined where a titre does not exceed the blank. */
export function acidByHand({ molarity, titres, blanks, masses }: Bench): Acid | undefined {
  const blank = blanks.length === 0 ? 0 : mean(blanks);
  if (titres.length === 0 || titres.some((titre) => titre - blank < 1e-9)) return undefined;
  const perGram = titres.map((titre, at) => (titre - blank) / (masses[at] ?? Number.NaN));
  const acidValue = definition * molarity * mean(perGram);
  const largest = definition * molarity * Math.max(...perGram);
  return {
    corrected: mean(titres) - blank,
    acidValue,
    ffa: ffaByHand(acidValue),
    isPlausible: largest <= 400 && ffaByHand(largest) <= 100,
  };
}

export const ffaByHand = (acidValue: number): number => (acidValue * oleic) / (definition * 10);

/** mol/L of lye weighed out at an assay. */
export const molarityByHand = (grams: number, assay: number, base: BaseByHand): number =>
  (grams * assay) / 100 / molarMass[base];

export const kilogramsByHand = (amount: number, unit: "l" | "kg"): number =>
  unit === "kg" ? amount : amount * litre;

/** g as weighed: moles of acid times the base's molar mass, and 10 g for each percent and kilogram. */
export const catalystByHand = (
  kilograms: number,
  acidValue: number,
  base: BaseByHand,
  assay: number,
  charge: number,
): number =>
  (kilograms * ((acidValue / definition) * molarMass[base] + 10 * charge)) / (assay / 100);

export const isNear = (found: unknown, wanted: number): boolean =>
  typeof found === "number" && Math.abs(found - wanted) <= 1e-9 * Math.abs(wanted);
