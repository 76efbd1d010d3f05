import { type Exact, exact, zero } from "../exact/exact";

/** The graduations in use, coarsest first, mL. */
export const usualSteps = [
  "1",
  "0.5",
  "0.2",
  "0.1",
  "0.05",
  "0.02",
  "0.01",
  "0.005",
  "0.002",
  "0.001",
].map(exact);

/**
 * The smallest difference the reader can have read to, judged by the readings as typed: the coarsest
 * usual step of which all of them are multiples. 0 when none fits: the readings are then not steps.
 * @example inferredStep([2.30, 2.35, 2.90]) // 0.05
 */
export const inferredStep = (readings: readonly Exact[]): Exact =>
  usualSteps.find((step) => readings.every((reading) => reading.mod(step).isZero())) ?? zero;
