import { type Exact, zero } from "../exact/exact";
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
 * A reading as on the mean mass, the blank taken off first: the blank does not grow with the sample, so
 * that an oil which titrates in exact proportion shows no scatter at all.
 * @param samples one or more
 * @param blank mean blank, mL; 0 where the readings are net already
 * @returns what a reading in one of their places comes to
 */
export function onMeanMass(
  samples: readonly OnSample[],
  blank: Exact = zero,
): (reading: Exact, place: number) => Millilitre {
  const masses = samples.map(([, sampleMass]) => sampleMass);
  const meanMass = mean(masses);
  return (reading, place) => atMass(reading.minus(blank), masses[place] ?? meanMass, meanMass);
}

/** Every reading as on the mean mass. */
export function atMeanMass(samples: readonly OnSample[], blank?: Exact): Millilitre[] {
  const asJudged = onMeanMass(samples, blank);
  return samples.map(([reading], place) => asJudged(reading, place));
}
