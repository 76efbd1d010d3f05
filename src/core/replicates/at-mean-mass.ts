import type { Exact } from "../exact/exact";
import { mean } from "../exact/lists";
import { as, type Gram, type Millilitre } from "../quantity/quantity";

/** Digits kept of a quotient, out of 34, so that readings in exact proportion come out equal. */
const digitsKept = 28;

/**
 * What a reading would have been on a sample of the mean mass: unequal samples then compare.
 *   reading x mean mass / own mass
 */
export const atMass = (reading: Exact, own: Exact, meanMass: Exact): Millilitre =>
  as("mL", reading.times(meanMass).div(own).toSignificantDigits(digitsKept));

/** A reading, and the mass it was taken on where each sample was weighed on its own. */
export type OnSample = readonly [reading: Millilitre, sampleMass: Gram];

/**
 * Every reading as on the mean mass. With one mass for all, the readings as they are.
 * @param samples one or more
 */
export function atMeanMass(samples: readonly OnSample[]): Millilitre[] {
  const meanMass = mean(samples.map(([, sampleMass]) => sampleMass));
  return samples.map(([reading, sampleMass]) => atMass(reading, sampleMass, meanMass));
}
