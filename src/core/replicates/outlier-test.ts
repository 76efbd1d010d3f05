import { type Exact, hundred } from "../exact/exact";
import type { Millilitre, Percent } from "../quantity/quantity";
import type { UsualScatter } from "../record/pooled-scatter";
import { meanBlank, neutralised } from "../titration/corrected-titre";
import { onMeanMass, type OnSample } from "./at-mean-mass";
import { deviations } from "./deviations";
import {
  farthest,
  type Farthest,
  fewestForGrubbs,
  grubbsCritical,
  grubbsProbability,
} from "./grubbs";
import { inferredStep } from "./step";

/** Replicate readings as they were typed, with what is known about how they were taken. */
export interface ReplicateSet {
  /** mL, one or more, in reading order. */
  readonly readings: readonly Millilitre[];
  /** The readings less blank as on the mean sample mass; as typed when one mass served all. */
  readonly judged: readonly Millilitre[];
  /** What another reading in the same place would be judged as. */
  readonly asJudged: (reading: Millilitre, place: number) => Millilitre;
  /** The smallest difference one reads to, mL; 0 when none can be told. */
  readonly step: Exact;
  readonly confidence: Percent;
  readonly hasOwnMasses: boolean;
  /** The blanks beside them, from the same hand; none: not titrated, or neutralised. */
  readonly blanks: readonly Millilitre[];
  /** How the same hand scattered before; undefined: the set speaks for itself. */
  readonly usual: UsualScatter | undefined;
}

/** What is known of a set beside its readings. */
export interface Beside {
  /** Each reading with its own mass; left out: one mass served all. */
  readonly samples?: readonly OnSample[] | undefined;
  /** Taken off readings on their own masses; left out: they are net already. */
  readonly blanks?: readonly Millilitre[] | undefined;
  readonly usual?: UsualScatter | undefined;
}

export interface Tested extends Farthest {
  readonly reading: Millilitre;
  readonly critical: number;
  /** Chance of a plain G as large among honest readings without graduation. */
  readonly probability: number;
  readonly isSuspect: boolean;
}

/** @param step mL; left out: inferred from the readings as typed */
export function replicateSet(
  readings: readonly Millilitre[],
  step: Millilitre | undefined,
  confidence: Percent,
  { samples, blanks = neutralised, usual }: Beside = {},
): ReplicateSet {
  const asJudged = samples
    ? onMeanMass(samples, meanBlank(blanks))
    : (reading: Millilitre): Millilitre => reading;
  return {
    readings,
    judged: readings.map(asJudged),
    asJudged,
    step: step ?? inferredStep(readings),
    confidence,
    hasOwnMasses: samples !== undefined,
    blanks,
    usual,
  };
}

/** The risk of a false alarm that goes with a confidence: 0.05 with 95 %. */
export const riskAt = (confidence: Percent): number =>
  hundred.minus(confidence).div(hundred).toNumber();

/**
 * One test, at most one flag, nothing dropped: is the reading farthest from the mean farther than
 * scatter and graduation explain?
 * @returns undefined when there is nothing to test: fewer than three readings, or all equal
 */
export function outlierTest(set: ReplicateSet): Tested | undefined {
  const count = set.judged.length;
  if (count < fewestForGrubbs) return undefined;
  const off = deviations(set.judged);
  if (off.every((deviation) => deviation === 0)) return undefined;

  const found = farthest(off, set.step.toNumber());
  const reading = set.readings[found.position];
  if (reading === undefined) return undefined;
  const critical = grubbsCritical(count, riskAt(set.confidence));
  return {
    ...found,
    reading,
    critical,
    probability: grubbsProbability(found.plain, count),
    isSuspect: found.graduated > critical,
  };
}
