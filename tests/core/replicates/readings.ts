/** Sets of readings for the tests of replicates: as typed at a bench, on a graduation. */
import fc from "fast-check";
import { quantity } from "../../../src/core/quantity/quantity";
import { replicateSet, type ReplicateSet } from "../../../src/core/replicates/outlier-test";

export const mL = (value: number | string) => quantity("mL", value);
const g = (value: number | string) => quantity("g", value);

/** Readings judged at 95 % with their own inferred step, or the step given. */
export const setOf = (readings: readonly number[], step?: number): ReplicateSet =>
  replicateSet(readings.map(mL), step === undefined ? undefined : mL(step), quantity("%", "95"));

/** The same, each on its own sample mass. */
export const setOnMasses = (pairs: readonly (readonly [number, number])[]): ReplicateSet =>
  replicateSet(
    pairs.map(([reading]) => mL(reading)),
    undefined,
    quantity("%", "95"),
    { samples: pairs.map(([reading, mass]) => [mL(reading), g(mass)]) },
  );

/** Hundredths of a millilitre from 0.01 to 50.00. */
export const reading = fc.integer({ min: 1, max: 5000 }).map((n) => n / 100);

/** Honest or not: near each other, with or without a stray one. */
export const readings = (minLength: number, maxLength = 12) =>
  fc.oneof(
    fc.array(reading, { minLength, maxLength }),
    fc
      .tuple(
        fc.integer({ min: 100, max: 3000 }),
        fc.array(fc.integer({ min: -10, max: 10 }), { minLength, maxLength }),
      )
      .map(([middle, offsets]) => offsets.map((offset) => (middle + offset) / 100)),
  );
