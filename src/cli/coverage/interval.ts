/**
 * How often the stated 95 % interval holds the true % FFA: whole titrations are simulated, with
 * scatter of titres and blanks, graduations, weighing and titrant, and the core states its interval.
 */
import { type BenchFigures, pooledFreedom } from "../../core/uncertainty/bench";
import { expand } from "../../core/uncertainty/expanded";
import { type UsualScatter, withUsual } from "../../core/record/pooled-scatter";
import { pooledDeviation } from "../../core/record/usual-scatter";
import { anyPlace, type Random, randomFrom, readDifference } from "./random";
import { recordOf } from "./record";

export interface Plan {
  readonly titres: number;
  /** 0: the solvent was neutralised. */
  readonly blanks: number;
  /** Graduation, mL. */
  readonly step: number;
  /** Standard deviation of one titration, titre or blank, mL. */
  readonly scatter: number;
  /** Is every titration begun at the zero mark? Then the graduation misses alike each time. */
  readonly fromZero: boolean;
  /** How much too late each titre stops, mL; the blank stops right. */
  readonly late?: number;
  /** How far off the titrant is, percent, and nobody typed it. */
  readonly strengthOff?: number;
  /** How far off the scale of the syringe is, percent, and nobody typed it. */
  readonly scaleOff?: number;
  /** Earlier titrations of three titres behind the usual scatter; left out: no record. */
  readonly earlier?: number;
  /** Scatter of those, mL; left out: as today. */
  readonly earlierScatter?: number;
}

/** What is true of the simulated bench. */
const truth = {
  /** Titre for the acid alone, mL, evenly spread over a graduation or more. */
  net: 2.3,
  netWithin: 0.05,
  blank: 0.4,
  molarity: 0.1,
  sampleMass: 7.05,
  acidMass: 282,
  massStep: 0.01,
  molarityPercent: 0.5,
};
const ffaOf = (net: number, molarity: number, sampleMass: number): number =>
  (molarity * net * truth.acidMass) / (10 * sampleMass);

const meanOf = (values: readonly number[]): number =>
  values.reduce((total, each) => total + each, 0) / values.length;
const squaresAbout = (values: readonly number[], middle: number): number =>
  values.reduce((total, each) => total + (each - middle) ** 2, 0);

/** One titration from flask to notebook, as the core's figures. */
function titrate(plan: Plan, net: number, random: Random): BenchFigures {
  const { titres: n, blanks: k, step, scatter, late = 0, strengthOff, scaleOff = 0 } = plan;
  const readAs = (delivered: number): number =>
    readDifference(
      (delivered + scatter * random.normal()) / (1 + scaleOff / 100),
      step,
      plan.fromZero ? 0 : anyPlace(step, random),
    );
  const percent = strengthOff === undefined ? truth.molarityPercent : 0;
  const strength = 1 + (strengthOff ?? random.within(percent)) / 100;
  const blankTrue = k > 0 ? truth.blank : 0;
  const titres = Array.from({ length: n }, () => readAs(net / strength + blankTrue + late));
  const blanks = Array.from({ length: k }, () => readAs(blankTrue));
  const { massStep } = truth;
  const sampleMass = readDifference(truth.sampleMass, massStep, anyPlace(massStep, random));

  const titre = meanOf(titres);
  const blank = k > 0 ? meanOf(blanks) : 0;
  const today = {
    squares: squaresAbout(titres, titre) + squaresAbout(blanks, blank),
    freedom: pooledFreedom(n, k),
  };
  const all = withUsual(today, usualOf(plan, random));
  const netTitre = titre - blank;
  return {
    ffa: ffaOf(netTitre, truth.molarity, sampleMass),
    netTitre,
    titre,
    blank,
    molarity: truth.molarity,
    sampleMass,
    titres: n,
    blanks: k,
    scatter: pooledDeviation(all),
    freedom: all.freedom,
    titreStep: step,
    massStep,
    weighings: 1,
    molarityPercent: percent,
    samplePercent: 0,
  };
}

const usualOf = (
  { earlier, earlierScatter, scatter, step }: Plan,
  random: Random,
): UsualScatter | undefined =>
  earlier === undefined
    ? undefined
    : recordOf({ titrations: earlier, scatter: earlierScatter ?? scatter, step }, random);

export interface Simulated {
  /** Share of runs, 0 to 1, whose interval holds the true % FFA. */
  readonly held: number;
  /** The same of those runs whose titres all came out equal. */
  readonly heldWhenEqual: number;
  /** Half of all runs state a ± below this, percent of the FFA. */
  readonly median: number;
}

/** Whole titrations, and what the interval was worth in them. */
export function simulate(plan: Plan, seed: number, runs = 20_000): Simulated {
  const random = randomFrom(seed);
  const sizes: number[] = [];
  let [held, equal, heldWhenEqual] = [0, 0, 0];
  for (let run = 0; run < runs; run += 1) {
    const net = truth.net + random.within(truth.netWithin);
    const trueFfa = ffaOf(net, truth.molarity, truth.sampleMass);
    const bench = titrate(plan, net, random);
    const { halfWidth } = expand(bench);
    const isHeld = Math.abs(bench.ffa - trueFfa) <= halfWidth;
    sizes.push((100 * halfWidth) / bench.ffa);
    if (isHeld) held += 1;
    if (bench.scatter > noScatter) continue;
    equal += 1;
    if (isHeld) heldWhenEqual += 1;
  }
  sizes.sort((a, b) => a - b);
  const median = sizes[Math.floor(sizes.length / 2)] ?? NaN;
  return { held: held / runs, heldWhenEqual: heldWhenEqual / equal, median };
}

/** Readings in doubles that are equal but for a rounding error, mL. */
const noScatter = 1e-9;

/** @returns the share of runs, 0 to 1, whose interval holds the true % FFA */
export const simulateCoverage = (plan: Plan, seed: number, runs?: number): number =>
  simulate(plan, seed, runs).held;

export interface Row {
  readonly titres: number;
  readonly blanks: number;
  readonly seed: number;
}

/** The rows of a table: 3, 4 and 6 titres with no, one and three blanks, each with its seed. */
export const rows: readonly Row[] = [3, 4, 6].flatMap((titres) =>
  [0, 1, 3].map((blanks) => ({ titres, blanks, seed: 10 * titres + blanks })),
);

/** Where the interval must hold in 93 to 98.5 % of runs. */
export const fineBench = { scatter: 0.05, steps: [0.01, 0.02] } as const;

/** Steps coarser than the scatter: for information, without a pass mark. */
export const coarseBench = { scatter: 0.02, steps: [0.05, 0.1] } as const;
