/**
 * How often the outlier test flags a set in which nothing is wrong, beside the plain Grubbs test, and
 * how often it finds a real slip. Sets are simulated; the test is the core's own.
 */
import { farthest, grubbsCritical } from "../../core/replicates/grubbs";
import { anyPlace, type Random, randomFrom, readDifference } from "./random";

export interface Bench {
  readonly count: number;
  /** Graduation, mL. */
  readonly step: number;
  /** Standard deviation of one titration, mL. */
  readonly scatter: number;
}

/** Shares of sets flagged, 0 to 1. */
export interface Flagged {
  readonly graduated: number;
  readonly plain: number;
}

const counts = [3, 4, 5, 6];
export const steps = [0.01, 0.02, 0.05, 0.1];
const scatters = [0.03, 0.05, 0.1];
/** Slips of one reading, mL. */
export const slips = [0.3, 1.0];
export const runs = 20_000;

const trueTitre = 2.5;
const risk = 0.05;

/** A set of titres as read; `slip` is added to the first. */
export function simulateSet(bench: Bench, slip: number, random: Random): number[] {
  return Array.from({ length: bench.count }, (_, place) =>
    readDifference(
      trueTitre + bench.scatter * random.normal() + (place === 0 ? slip : 0),
      bench.step,
      anyPlace(bench.step, random),
    ),
  );
}

/** Whole steps from the first reading: equal readings are then exactly equal. */
function deviationsOf(readings: readonly number[], step: number): number[] {
  const inSteps = readings.map((reading) => Math.round(reading / step));
  const middle = inSteps.reduce((total, each) => total + each, 0) / inSteps.length;
  return inSteps.map((each) => (each - middle) * step);
}

/** Shares of simulated sets flagged, with allowance for the graduation and without. */
export function shareFlagged(bench: Bench, slip: number, seed: number): Flagged {
  const random = randomFrom(seed);
  const critical = grubbsCritical(bench.count, risk);
  let graduated = 0;
  let plain = 0;
  for (let run = 0; run < runs; run += 1) {
    const off = deviationsOf(simulateSet(bench, slip, random), bench.step);
    if (off.every((each) => each === 0)) continue;
    const found = farthest(off, bench.step);
    if (found.graduated > critical) graduated += 1;
    if (found.plain > critical) plain += 1;
  }
  return { graduated: graduated / runs, plain: plain / runs };
}

/** The rows of the table, each with its seed. */
export const rows = counts.flatMap((count) =>
  scatters.map((scatter) => ({ count, scatter, seed: 1000 * count + Math.round(100 * scatter) })),
);
