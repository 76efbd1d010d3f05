/**
 * How often the judgement of replicates calls an honest set suspect or apart, and how often it finds a
 * slip of one reading: with a record of the same hand, and without one.
 */
import { exact } from "../../core/exact/exact";
import { as } from "../../core/quantity/quantity";
import { usual } from "../../core/reference/defaults";
import { judgement } from "../../core/replicates/judgement";
import { replicateSet } from "../../core/replicates/outlier-test";
import { type Bench, simulateSet } from "./false-alarms";
import { randomFrom } from "./random";
import { recordOf } from "./record";

export interface JudgedBench extends Bench {
  /** Earlier titrations of three titres each; left out: no record. */
  readonly earlier?: number;
}

const decimals = 4;

/** @returns the share of sets, 0 to 1, in which something is not as it should be */
export function shareDoubted(bench: JudgedBench, slip: number, seed: number, runs = 5000): number {
  const random = randomFrom(seed);
  const { earlier, step, scatter } = bench;
  const asMillilitres = (reading: number) => as("mL", exact(reading.toFixed(decimals)));
  let doubted = 0;
  for (let run = 0; run < runs; run += 1) {
    const record =
      earlier === undefined ? undefined : recordOf({ titrations: earlier, scatter, step }, random);
    const readings = simulateSet(bench, slip, random).map(asMillilitres);
    const set = replicateSet(readings, asMillilitres(step), usual.confidence, { usual: record });
    if (judgement(set).marks.some((mark) => mark !== "agrees")) doubted += 1;
  }
  return doubted / runs;
}
