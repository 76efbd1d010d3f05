/**
 * An end point that a probe sees: where its curve is steepest (ISO 660 lets a probe decide). Slopes at
 * the middle of each interval, second differences at the middle of those middles, and the end point
 * where these pass through zero beside the steepest, by a straight line.
 */
import { type Exact, exact } from "../exact/exact";
import { as, type Millilitre } from "../quantity/quantity";
import { isProblem, type Outcome, problem } from "../problem/problem";

/** Volume of titrant given, and what the probe shows: pH, or mV of either sign. */
export type ProbePoint = readonly [volume: Millilitre, reading: Exact];

export interface Step {
  readonly from: Millilitre;
  readonly to: Millilitre;
  /** mL, the middle of the interval. */
  readonly middle: Millilitre;
  /** pH or mV for each mL. */
  readonly slope: Exact;
}

export const fewestPoints = 6;
export const fewestForSlope = 2;
/** Intervals needed on each side of the steepest. */
export const besideSteepest = 2;
const two = exact(2);

const middleOf = (a: Millilitre, b: Millilitre): Millilitre => as("mL", a.plus(b).div(two));

/** The slope of each interval. */
export function steepness(points: readonly ProbePoint[]): Outcome<Step[]> {
  const steps: Step[] = [];
  for (const [place, [to, reading]] of points.entries()) {
    const [from, before] = points[place - 1] ?? [];
    if (from === undefined || before === undefined) continue;
    if (to.lte(from)) return problem({ code: "volumes-not-rising", before: from, after: to });
    const slope = reading.minus(before).div(to.minus(from));
    steps.push({ from, to, middle: middleOf(from, to), slope });
  }
  return steps;
}

/** The first of the steepest, rising or falling. */
const steepestOf = (steps: readonly Step[]): number =>
  steps.reduce(
    (most, { slope }, place) => (slope.abs().gt(steps[most]?.slope.abs() ?? 0) ? place : most),
    0,
  );

export interface EndPointFound {
  readonly volume: Millilitre;
  /** The steepest interval: the end point is known no better than it is wide. */
  readonly steepest: Step;
}

/**
 * @param points in the order given, volumes strictly rising, six or more
 * @example Harvey, Modern Analytical Chemistry, Table 9.5: 15.669 mL
 */
export function endPoint(points: readonly ProbePoint[]): Outcome<EndPointFound> {
  const steps = steepness(points);
  if (isProblem(steps)) return steps;
  if (points.length < fewestPoints) {
    return problem({ code: "too-few-points", given: points.length, needed: fewestPoints });
  }
  const place = steepestOf(steps);
  const [before, steepest, after] = [steps[place - 1], steps[place], steps[place + 1]];
  if (!steepest || steepest.slope.isZero()) return problem({ code: "flat-curve" });
  const isEarly = place < besideSteepest;
  if (!before || !after || isEarly || place >= steps.length - besideSteepest) {
    const { from, to } = steepest;
    return problem({ code: "end-at-edge", side: isEarly ? "before" : "past", from, to });
  }
  const second = (a: Step, b: Step): Exact => b.slope.minus(a.slope).div(b.middle.minus(a.middle));
  const [rising, falling] = [second(before, steepest), second(steepest, after)];
  const [left, right] = [
    middleOf(before.middle, steepest.middle),
    middleOf(steepest.middle, after.middle),
  ];
  const share = rising.div(rising.minus(falling));
  return { volume: as("mL", left.plus(right.minus(left).times(share))), steepest };
}
