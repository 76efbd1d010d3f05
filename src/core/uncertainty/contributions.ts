import type { BenchFigures } from "./bench";
import { fromLimits, fromTwoReadings, ofMean } from "./standard-uncertainty";

/** One cause of doubt about the % FFA. */
export interface Contribution {
  readonly source: string;
  /** Scatter is known from few readings and gets Student t; the rest from limits, and gets 1.96. */
  readonly isScatter: boolean;
  /** The quantity doubted; undefined when there is none: the solvent was neutralised, to a shade that is read as a blank is. */
  readonly value: number | undefined;
  readonly unit: "mL" | "g" | "mol/L";
  /** Standard uncertainty, in the unit. */
  readonly standard: number;
  /** % FFA for one unit of the quantity: the partial derivative. */
  readonly perUnit: number;
}

/** The cause that stands only where its limits are known. */
export const buretteSource = "burette";

/** Percent limits of a quantity, as its standard uncertainty in its own unit. */
const fromPercent = (value: number, percent: number): number => fromLimits((value * percent) / 100);

/**
 * The seven causes, in the order of the budget, and the burette's own error where limits of it are
 * known: titre and blank are off by the same part, so that it goes with the difference of the two.
 *   FFA = c M (V - B) / (10 m)
 * so that dFFA/dV = FFA/(V - B), dFFA/dB = -FFA/(V - B), dFFA/dc = FFA/c, dFFA/dm = -FFA/m.
 */
export function contributions(bench: BenchFigures): Contribution[] {
  const { ffa, netTitre, blanks, scatter, titreStep, sampleMass, molarity } = bench;
  const hasBlank = blanks > 0;
  const titre = { value: bench.titre, unit: "mL", perUnit: ffa / netTitre } as const;
  const blank = {
    value: hasBlank ? bench.blank : undefined,
    unit: "mL",
    perUnit: -ffa / netTitre,
  } as const;
  const mass = { value: sampleMass, unit: "g", perUnit: -ffa / sampleMass } as const;
  const causes: Contribution[] = [
    {
      source: "titre scatter",
      isScatter: true,
      ...titre,
      standard: ofMean(scatter, bench.titres),
    },
    {
      source: "blank scatter",
      isScatter: true,
      ...blank,
      standard: hasBlank ? ofMean(scatter, blanks) : 0,
    },
    { source: "titre reading", isScatter: false, ...titre, standard: fromTwoReadings(titreStep) },
    {
      source: "blank reading",
      isScatter: false,
      ...blank,
      standard: fromTwoReadings(titreStep),
    },
    {
      source: "titrant",
      isScatter: false,
      value: molarity,
      unit: "mol/L",
      perUnit: ffa / molarity,
      standard: fromPercent(molarity, bench.molarityPercent),
    },
    {
      source: "weighing",
      isScatter: false,
      ...mass,
      standard: ofMean(fromTwoReadings(bench.massStep), bench.weighings),
    },
    {
      source: "sample by volume",
      isScatter: false,
      ...mass,
      standard: fromPercent(sampleMass, bench.samplePercent),
    },
  ];
  if (bench.burettePercent) {
    causes.push({
      source: buretteSource,
      isScatter: false,
      ...titre,
      value: netTitre,
      standard: fromPercent(netTitre, bench.burettePercent),
    });
  }
  return causes;
}

/** Standard uncertainty as % FFA. */
export const asFfa = (each: Contribution): number => Math.abs(each.perUnit) * each.standard;
