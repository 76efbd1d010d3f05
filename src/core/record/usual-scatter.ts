/** How well one hand repeats, from the titrations of its record (design: the record knows the hand). */
import type { Exact } from "../exact/exact";
import { type Outcome, isProblem, problem } from "../problem/problem";
import type { Millilitre } from "../quantity/quantity";
import { atMeanMass, type OnSample } from "../replicates/at-mean-mass";
import { deviations, sumOfSquares } from "../replicates/deviations";
import { inferredStep } from "../replicates/step";
import { lessBlank, meanBlank } from "../titration/corrected-titre";
import { fromTwoReadings } from "../uncertainty/standard-uncertainty";

/** One titration of the record. */
export interface PastTitration {
  readonly titres: readonly Millilitre[];
  /** None: not titrated, or the solvent was neutralised. */
  readonly blanks: readonly Millilitre[];
  /** They are those of a titration before it, which has told them: titrated once for several lots. */
  readonly sharesBlanks?: boolean;
  /** Each titre with its own sample mass; undefined where one mass served all. */
  readonly samples: readonly OnSample[] | undefined;
}

/** Sum of squares about a mean, and how many of them are free. */
export interface Squares {
  readonly squares: number;
  readonly freedom: number;
}

export const squaresOf = (values: readonly Exact[]): Squares =>
  values.length < 2
    ? { squares: 0, freedom: 0 }
    : { squares: sumOfSquares(deviations(values)), freedom: values.length - 1 };

/** Sets that scatter alike, put together. */
export const pooled = (sets: readonly Squares[]): Squares => ({
  squares: sets.reduce((sum, each) => sum + each.squares, 0),
  freedom: sets.reduce((sum, each) => sum + each.freedom, 0),
});

/** Pooled standard deviation (ISO 5725-2, 7.4.5.1; JCGM 100, H.5): root of all squares over all freedom. */
export const pooledDeviation = ({ squares, freedom }: Squares): number =>
  Math.sqrt(squares / freedom);

/** The titres as they compare: net and on the mean mass of the row, where each has its own. */
function comparable({ titres, blanks, samples }: PastTitration): Outcome<readonly Millilitre[]> {
  const blank = meanBlank(blanks);
  for (const titre of titres) {
    const net = lessBlank(titre, blank);
    if (isProblem(net)) return net;
  }
  return samples ? atMeanMass(samples, blank) : titres;
}

/** The squares of one titration's titres alone. */
export function squaresOfTitres(titration: PastTitration): Outcome<Squares> {
  const titres = comparable(titration);
  return isProblem(titres) ? titres : squaresOf(titres);
}

/** The squares of a record, titres and blanks together: one hand. */
function squaresOfRecord(record: readonly PastTitration[]): Outcome<Squares> {
  const sets: Squares[] = [];
  for (const titration of record) {
    const titres = comparable(titration);
    if (isProblem(titres)) return titres;
    sets.push(squaresOf(titres));
    if (titration.sharesBlanks !== true) sets.push(squaresOf(titration.blanks));
  }
  const all = pooled(sets);
  if (all.freedom > 0) return all;
  return problem({ code: "no-repeats" });
}

/**
 * The usual scatter of one titration.
 *   sqrt( sum of squares within rows / sum of (n - 1) and (k - 1) ), never below step / sqrt 6
 * @param record rows with fewer than two readings add nothing
 * @param step the smallest difference one reads to, mL; left out: inferred from all readings
 * @returns mL
 * @example usualScatter of 2.40 2.45 2.50 / 1.10 1.15 / 3.00 3.00 3.10 // 0.0508265
 */
export function usualScatter(
  record: readonly PastTitration[],
  step: Millilitre | undefined,
): Outcome<number> {
  const all = squaresOfRecord(record);
  if (isProblem(all)) return all;
  const readings = record.flatMap(({ titres, blanks }) => [...titres, ...blanks]);
  const floor = fromTwoReadings((step ?? inferredStep(readings)).toNumber());
  return Math.max(pooledDeviation(all), floor);
}

/** The degrees of freedom behind it: sum of (n - 1) and (k - 1). */
export function usualFreedom(record: readonly PastTitration[]): Outcome<number> {
  const all = squaresOfRecord(record);
  return isProblem(all) ? all : all.freedom;
}
