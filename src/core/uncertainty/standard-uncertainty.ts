/**
 * Standard uncertainties from what is known of a quantity (JCGM 100:2008, 4.2 and 4.3). All in the
 * unit of what is given.
 */

/** Limits of +-a, anything between equally likely: a / sqrt 3 (GUM 4.3.7). */
export const fromLimits = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** Limits of +-a, the middle likelier: a / sqrt 6 (GUM 4.3.9). */
export const fromTriangle = (halfWidth: number): number => halfWidth / Math.sqrt(6);

/** A figure read once to a step: step / sqrt 12 (GUM F.2.2.1). */
export const fromStep = (step: number): number => step / Math.sqrt(12);

/** The difference of two figures read to a step, as a titre and a weighing are: step / sqrt 6. */
export const fromTwoReadings = (step: number): number => step / Math.sqrt(6);

/** The mean of repeated readings: s / sqrt n (GUM 4.2.3). */
export const ofMean = (deviation: number, count: number): number => deviation / Math.sqrt(count);

/** A normal deviate is within +- this in 95 of 100 cases. */
export const normal95 = 1.959963984540054;

/** A 95 % interval stated without saying how: half-width / 1.96 (QUAM:2012, example A2). */
export const fromInterval95 = (halfWidth: number): number => halfWidth / normal95;
