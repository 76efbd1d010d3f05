/** The figures an uncertainty is worked out from, as helper cells, and the interval from them. */
import { normal95 } from "../../../core/uncertainty/standard-uncertainty";
import { isPlausiblePercent } from "../titration";
import { replicatesOf } from "./pairs";
import type { Reading } from "./reading";
import { squaresAbout } from "./scatter";
import { figure, when } from "./text";
import { fattyAcidMass } from "./words";

/** Each a helper cell, a cell of the workbook or a figure. */
export interface BenchText {
  readonly ffa: string;
  readonly net: string;
  readonly blank: string;
  readonly molarity: string;
  readonly mass: string;
  readonly titres: string;
  readonly blanks: string;
  readonly scatter: string;
  readonly freedom: string;
  readonly titreStep: string;
  readonly massStep: string;
  readonly weighings: string;
  readonly molarityPercent: string;
  readonly samplePercent: string;
}

/** Chosen by whether there is any blank. */
export const ifBlank = (blanks: string, then: string, otherwise: string): string =>
  when(blanks === "0" ? "FALSE" : /^\d+$/.test(blanks) ? "TRUE" : `${blanks}>0`, then, otherwise);

export const pooledFreedom = (titres: string, blanks: string): string =>
  `${titres}-1+${ifBlank(blanks, `${blanks}-1`, "0")}`;

export function benchText(reading: Reading): BenchText | undefined {
  const molarity = reading.figure("molarity");
  const acid = fattyAcidMass(reading);
  const rest = {
    titreStep: reading.figure("titreStep"),
    massStep: reading.figure("massStep"),
    molarityPercent: reading.figure("molarityPercent", "0"),
    samplePercent: reading.figure("samplePercent", "0"),
  };
  const found = replicatesOf(reading);
  if (!found) return undefined;
  const { blank, net: ratios, meanMass, hasOwnMasses } = found;
  const { helper } = reading.call;
  const perGram = ratios.text;
  reading.needs(`COUNT(${perGram})<2`);
  const value = `${molarity}*AVERAGE(${perGram})*${acid}/10`;
  reading.allow(isPlausiblePercent(value));
  const mass = helper("mean sample mass, g", meanMass);
  const titres = helper("titres: how many", `COUNT(${perGram})`);
  const blanks = blank.count;
  const freedom = helper("degrees of freedom of the scatter", pooledFreedom(titres, blanks));
  const squares = `${squaresAbout(perGram)}*${mass}^2+${blank.squares()}`;
  return {
    ffa: helper("FFA, %", reading.guarded(value)),
    net: helper("mean titre less blank, on the mean sample, mL", `AVERAGE(${perGram})*${mass}`),
    blank: blank.mean,
    molarity,
    mass,
    titres,
    blanks,
    scatter: helper("standard deviation of one titration, mL", `SQRT((${squares})/${freedom})`),
    freedom,
    weighings: hasOwnMasses ? titres : "1",
    ...rest,
  };
}

/** Each cause of doubt as a standard uncertainty in its own unit, in the order of the budget. */
export function standards(bench: BenchText): string[] {
  const { scatter, titres, blanks, titreStep, massStep, weighings, molarity, mass } = bench;
  const reading = `${titreStep}/SQRT(6)`;
  return [
    `${scatter}/SQRT(${titres})`,
    ifBlank(blanks, `${scatter}/SQRT(${blanks})`, "0"),
    reading,
    ifBlank(blanks, reading, "0"),
    `${molarity}*${bench.molarityPercent}/100/SQRT(3)`,
    `${massStep}/SQRT(6)/SQRT(${weighings})`,
    `${mass}*${bench.samplePercent}/100/SQRT(3)`,
  ];
}

/** % FFA for one unit of each. */
export const slopes = ({ ffa, net, molarity, mass }: BenchText): string[] => {
  const [perTitre, perStrength, perMass] = [net, molarity, mass].map((unit) => `${ffa}/${unit}`);
  const [v = "", c = "", m = ""] = [perTitre, perStrength, perMass];
  return [v, v, v, v, c, m, m];
};

/** How many of the causes are scatter. */
export const scatterParts = 2;

export const normal = figure(normal95);
export const studentT = (freedom: string): string => `TINV(0.05,${freedom})`;

/** Root of the sum of squares. */
export const combined = (parts: readonly string[]): string => `SQRT(SUMSQ(${parts.join(",")}))`;

/** The expanded uncertainty, % FFA. */
export function expanded(bench: BenchText): string {
  const factors = slopes(bench);
  const parts = standards(bench).map((standard, place) => `${standard}*${factors[place] ?? ""}`);
  const scatter = combined(parts.slice(0, scatterParts));
  const rest = combined(parts.slice(scatterParts));
  return combined([`${studentT(bench.freedom)}*${scatter}`, `${normal}*${rest}`]);
}
