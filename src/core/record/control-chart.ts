/** A control chart of single values, by moving ranges (NIST/SEMATECH e-Handbook 6.3.2.2). */
import { computed, type Exact, one } from "../exact/exact";
import { mean } from "../exact/lists";
import { type Outcome, problem } from "../problem/problem";
import { inferredStep } from "../replicates/step";
import { fromTwoReadings } from "../uncertainty/standard-uncertainty";

/** Fewer say nothing about their scatter. */
export const fewestValues = 5;
/** Mean size of the difference of two normal values, over their standard deviation: 2 / sqrt pi. */
export const rangePerSigma = 2 / Math.sqrt(Math.PI);

export interface ControlChart {
  readonly values: readonly Exact[];
  readonly centre: Exact;
  readonly movingRange: Exact;
  readonly sigma: number;
  /** The exponentially weighted mean, from the centre on, and the half-width of its limits. */
  readonly weighted: Exact;
  readonly weightedWidth: number;
}

/** Distance of the action and of the warning limits from the centre, in sigmas. */
export const action = 3;
export const warning = 2;

/**
 * Centre, moving range and limits of values in the order of time.
 *   sigma = mean |x(i) - x(i-1)| sqrt(pi)/2, never below step / sqrt 6
 *   z(i) = w x(i) + (1 - w) z(i-1), from the centre; limits 3 sigma sqrt( w / (2 - w) )
 * @param values five or more
 * @param baseline how many first values set centre and sigma; left out: all
 * @param step the smallest difference one reads to; left out: inferred from the values
 * @param weight of a new value, above 0 to 1
 * @example controlChart of 49.6 47.6 49.9 51.3 47.8 51.2 52.6 52.4 53.6 52.1: centre 50.81, range 1.8778
 */
export function controlChart(
  values: readonly Exact[],
  baseline: Exact | undefined,
  step: Exact | undefined,
  weight: Exact,
): Outcome<ControlChart> {
  const needed = Math.max(fewestValues, baseline?.toNumber() ?? 0);
  if (values.length < needed) {
    return problem({
      code: "too-few",
      argument: "values",
      called: "value",
      given: values.length,
      needed,
    });
  }
  const early = values.slice(0, baseline?.toNumber());
  const centre = mean(early);
  const ranges = early.slice(1).map((value, place) => value.minus(early[place] ?? value).abs());
  const movingRange = mean(ranges);
  const floor = fromTwoReadings((step ?? inferredStep(values)).toNumber());
  const sigma = Math.max(movingRange.toNumber() / rangePerSigma, floor);
  const weighted = values.reduce(
    (before, value) => weight.times(value).plus(one.minus(weight).times(before)),
    centre,
  );
  const share = weight.toNumber();
  return {
    values,
    centre,
    movingRange,
    sigma,
    weighted,
    weightedWidth: action * sigma * Math.sqrt(share / (2 - share)),
  };
}

/** So many sigmas from the centre. */
export const limitAt = ({ centre, sigma }: ControlChart, sigmas: number): Exact =>
  centre.plus(computed(sigmas * sigma));
