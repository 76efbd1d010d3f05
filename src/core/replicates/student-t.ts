/**
 * Student's t for whole degrees of freedom, by the finite series (Abramowitz and Stegun 26.7.3 and
 * 26.7.4). With theta = atan(t / sqrt(nu)) the share inside +-t is
 *   even nu:           sin(theta) (1 + 1/2 cos2 + 1 3/(2 4) cos4 + ... to cos^(nu-2))
 *   odd nu:  2/pi (theta + sin(theta) (cos + 2/3 cos3 + 2 4/(3 5) cos5 + ... to cos^(nu-2)))
 * Carried on without end the same series gives exactly 1, so the share outside is what the finite sum
 * leaves out. A small tail is summed from there: 1 less the finite sum would be rounding error.
 */
interface Tail {
  /** Share of the distribution beyond +t and below -t. */
  readonly outside: number;
  /** How fast its logarithm falls with the logarithm of t. */
  readonly slope: number;
}

/** Above this, 1 less the finite sum keeps 14 digits. */
const largeTail = 0.05;
const smallestShare = 1e-17;

function tail(t: number, freedom: number): Tail {
  const isOdd = freedom % 2 === 1;
  const squared = freedom / (freedom + t * t);
  const sine = t / Math.sqrt(freedom + t * t);
  const scale = isOdd ? 2 / Math.PI : 1;
  let term = isOdd ? Math.sqrt(squared) : 1;
  let inside = 0;
  let power = isOdd ? 1 : 0;
  const next = (): void => {
    power += 2;
    term *= (squared * (power - 1)) / power;
  };
  for (; power < freedom; next()) inside += term;

  const density = freedom * scale * sine * term;
  const angle = isOdd ? Math.atan2(t, Math.sqrt(freedom)) : 0;
  let outside = 1 - scale * (angle + sine * inside);
  if (outside < largeTail) {
    let left = 0;
    for (; term > left * smallestShare; next()) left += term;
    outside = scale * sine * left;
  }
  return { outside, slope: density / outside };
}

/**
 * Probability that |T| exceeds t.
 * @param t 0 or more; Infinity gives 0
 * @param freedom whole degrees of freedom, 1 or more
 * @example twoSidedTail(12.7062, 1) // 0.05
 */
export const twoSidedTail = (t: number, freedom: number): number =>
  t === Infinity ? 0 : tail(t, freedom).outside;

const mostSteps = 100;

/**
 * The t that |T| exceeds with a given probability: 0.05 for a two-sided 95 % interval.
 * Newton's rule on logarithms, from above: the logarithm of the tail bends downwards in the logarithm
 * of t, so every step comes nearer and none overshoots.
 * @param outside above 0, below 1
 * @param freedom whole degrees of freedom, 1 or more
 * @example studentT(0.05, 2) // 4.302653
 */
export function studentT(outside: number, freedom: number): number {
  let t = 1;
  while (twoSidedTail(t, freedom) > outside) t *= 2;
  for (let step = 0; step < mostSteps; step += 1) {
    const here = tail(t, freedom);
    const change = Math.log(here.outside / outside) / here.slope;
    t *= Math.exp(change);
    if (Math.abs(change) < 4 * Number.EPSILON) break;
  }
  return t;
}
