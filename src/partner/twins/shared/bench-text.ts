/** The figures an uncertainty is worked out from, as helper cells, and the interval from them. */
import { poolingRisk } from "../../../core/record/pooled-scatter";
import { normal95 } from "../../../core/uncertainty/standard-uncertainty";
import { replicatesOf } from "./pairs";
import type { Reading } from "./reading";
import { squaresAbout } from "./scatter";
import { always, and, figure, when } from "./text";

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
  /** How many of them are the record's. */
  readonly usualFreedom: string;
  readonly titreStep: string;
  readonly massStep: string;
  readonly weighings: string;
  readonly molarityPercent: string;
  readonly samplePercent: string;
  /** "0" where it is known to be left out. */
  readonly burettePercent: string;
}

/** Chosen by whether there is any blank. */
export const ifBlank = (blanks: string, then: string, otherwise: string): string =>
  when(blanks === "0" ? "FALSE" : /^\d+$/.test(blanks) ? "TRUE" : `${blanks}>0`, then, otherwise);

export const pooledFreedom = (titres: string, blanks: string): string =>
  `${titres}-1+${ifBlank(blanks, `${blanks}-1`, "0")}`;

/** What the doubt is about: its figure from mL per gram, and when that is allowed. */
export interface ResultText {
  readonly label: string;
  readonly massesName: string;
  readonly samplePercentName: string;
  figure(perGram: string, molarity: string): string;
  isAllowed(value: string): string;
}

const zero = "0";

/** Text of a figure that may be left out; "0" where it is known to be. */
const orNone = (reading: Reading, name: string): string =>
  reading.entry.arguments.some((each) => each.name === name) ? reading.figure(name, zero) : zero;

const today = "today's scatter alone:";

/** Today and the record put together, or today alone where it scatters more. */
function scatterText(
  reading: Reading,
  squares: string,
  freedom: string,
): Pick<BenchText, "scatter" | "freedom" | "usualFreedom"> {
  const { helper } = reading.call;
  const [usual, usualFreedom] = [orNone(reading, "usualScatter"), orNone(reading, "usualFreedom")];
  const label = "standard deviation of one titration, mL";
  if (usual === zero && usualFreedom === zero) {
    const all = helper("degrees of freedom of the scatter", freedom);
    return {
      scatter: helper(label, `SQRT((${squares})/${all})`),
      freedom: all,
      usualFreedom: zero,
    };
  }
  reading.needs(`(${usual}=0)<>(${usualFreedom}=0)`);
  if (usualFreedom !== zero) reading.allow(`INT(${usualFreedom})=${usualFreedom}`);
  const own = helper(`${today} degrees of freedom`, freedom);
  const ownSquares = helper(`${today} sum of squares`, squares);
  const chance = `FDIST(${ownSquares}/${own}/${usual}^2,${own},${usualFreedom})`;
  const pools = helper(
    "degrees of freedom of the record that count: none where today scatters more",
    reading.guarded(
      `IF(${usualFreedom}=0,0,IF(${own}<1,${usualFreedom},IF(${chance}<${poolingRisk},0,${usualFreedom})))`,
    ),
  );
  const all = helper("degrees of freedom of the scatter", `${own}+${pools}`);
  const both = `SQRT((${ownSquares}+${pools}*${usual}^2)/${all})`;
  return { scatter: helper(label, both), freedom: all, usualFreedom: pools };
}

export function benchText(reading: Reading, result: ResultText): BenchText | undefined {
  const isOfOil = result.massesName === "sampleMasses";
  const molarity = isOfOil ? reading.figure("molarity") : "1";
  const rest = {
    titreStep: reading.figure("titreStep"),
    massStep: reading.figure("massStep"),
    molarityPercent: isOfOil ? reading.figure("molarityPercent", zero) : zero,
    samplePercent: reading.figure(result.samplePercentName, zero),
    burettePercent: orNone(reading, "burettePercent"),
  };
  const found = replicatesOf(reading, result.massesName);
  if (!found) return undefined;
  const { blank, net: ratios, meanMass, hasOwnMasses } = found;
  const { helper } = reading.call;
  const perGram = ratios.text;
  const mean = `AVERAGE(${perGram})`;
  const value = result.figure(mean, molarity);
  const titres = helper("titres: how many", `COUNT(${perGram})`);
  const blanks = blank.count;
  const usualFreedom = orNone(reading, "usualFreedom");
  reading.needs(and(`${titres}<2`, usualFreedom === zero ? always : `${usualFreedom}=0`));
  reading.allow(result.isAllowed(value));
  const mass = helper("mean sample mass, g", meanMass);
  const squares = `${squaresAbout(perGram)}*${mass}^2+${blank.squares()}`;
  return {
    ffa: helper(result.label, reading.guarded(value)),
    net: helper("mean titre less blank, on the mean sample, mL", `${mean}*${mass}`),
    blank: blank.mean,
    molarity,
    mass,
    titres,
    blanks,
    ...scatterText(reading, squares, pooledFreedom(titres, blanks)),
    weighings: hasOwnMasses ? titres : "1",
    ...rest,
  };
}

/** Each cause of doubt as a standard uncertainty in its own unit, in the order of the budget. */
export function standards(bench: BenchText): string[] {
  const { scatter, titres, blanks, titreStep, massStep, weighings, molarity, mass } = bench;
  const reading = `${titreStep}/SQRT(6)`;
  const burette = `${bench.net}*${bench.burettePercent}/100/SQRT(3)`;
  return [
    `${scatter}/SQRT(${titres})`,
    ifBlank(blanks, `${scatter}/SQRT(${blanks})`, "0"),
    reading,
    reading,
    `${molarity}*${bench.molarityPercent}/100/SQRT(3)`,
    `${massStep}/SQRT(6)/SQRT(${weighings})`,
    `${mass}*${bench.samplePercent}/100/SQRT(3)`,
    ...(bench.burettePercent === zero ? [] : [burette]),
  ];
}

/** % FFA for one unit of each. */
export const slopes = ({ ffa, net, molarity, mass }: BenchText): string[] => {
  const [perTitre, perStrength, perMass] = [net, molarity, mass].map((unit) => `${ffa}/${unit}`);
  const [v = "", c = "", m = ""] = [perTitre, perStrength, perMass];
  return [v, v, v, v, c, m, m, v];
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
