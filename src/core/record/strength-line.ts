/** What a titrant's strength is on a day, from the days it was set (JCGM 100:2008, H.3). */
import { type Exact, exact, hundred } from "../exact/exact";
import { mean, smallest } from "../exact/lists";
import { type Outcome, problem } from "../problem/problem";
import type { MolePerLitre } from "../quantity/quantity";
import { sumOfSquares } from "../replicates/deviations";
import { studentT } from "../replicates/student-t";

/** A day as the spreadsheet counts them, and the strength found on it. */
export type OnDay = readonly [day: Exact, strength: MolePerLitre];

/** A line through two is never wrong. */
export const fewestStrengths = 3;
/** The change is told for so many days. */
export const monthDays = 30;
/** A strength farther than this from the first is worth setting anew (common practice, no source). */
export const allowedShift = exact("0.01");
const risk = 0.05;
/** A distance from the line below this part of the strength is a rounding error. */
export const roundingPart = 1e-14;

export interface StrengthLine {
  /** mol/L on the day asked. */
  readonly strength: Exact;
  /** Half-width of its 95 % interval, mol/L. */
  readonly halfWidth: number;
  /** Change in 30 days, percent of that strength. */
  readonly change: Exact;
  /** Scatter about the line, mol/L. */
  readonly scatter: number;
  /** Does the strength change more than chance explains? */
  readonly isChanging: boolean;
  /** Days from the first to where the line leaves 1 % of its first value; Infinity where it is level. */
  readonly daysWithin: number;
  /** The day asked, in days after the first. */
  readonly daysAsked: number;
}

/**
 * Least squares line of strength against day.
 *   y(x) = mean y + b (x - mean x);  U = t(0.975, n-2) s sqrt( 1/n + (x - mean x)^2 / Sxx )
 * @param set three or more, on two days or more
 * @param day the day asked, counted as the others are
 * @example JCGM 100 H.3: intercept -0.1712 at 20, slope 0.00218, -0.1494 (0.0041) at 30
 */
export function strengthOn(set: readonly OnDay[], day: Exact): Outcome<StrengthLine> {
  const count = set.length;
  if (count < fewestStrengths) {
    const needed = fewestStrengths;
    return problem({
      code: "too-few",
      argument: "strengths",
      called: "strength",
      given: count,
      needed,
    });
  }
  const days = set.map(([each]) => each);
  const first = smallest(days);
  const middle = mean(days);
  const level = mean(set.map(([, strength]) => strength));
  const apart = set.map(([each]) => each.minus(middle));
  const across = apart.reduce((sum, each) => sum.plus(each.times(each)), exact(0));
  if (across.isZero()) return problem({ code: "one-day", day: first });
  const slope = set
    .reduce(
      (sum, [, strength], place) => sum.plus((apart[place] ?? middle).times(strength)),
      exact(0),
    )
    .div(across);
  const at = (when: Exact): Exact => level.plus(slope.times(when.minus(middle)));
  const strength = at(day);
  const start = at(first);
  if (strength.lte(0) || start.lte(0)) return problem({ code: "no-strength-left", strength });

  const off = set.map(([each, found]) => found.minus(at(each)).toNumber());
  const isOff = off.some((each) => Math.abs(each) > roundingPart * level.toNumber());
  const scatter = isOff ? Math.sqrt(sumOfSquares(off) / (count - 2)) : 0;
  const t = studentT(risk, count - 2);
  const far = day.minus(middle).toNumber();
  const spread = across.toNumber();
  const rise = Math.abs(slope.toNumber());
  return {
    strength,
    halfWidth: t * scatter * Math.sqrt(1 / count + (far * far) / spread),
    change: slope.times(monthDays).times(hundred).div(strength),
    scatter,
    isChanging:
      rise * monthDays > roundingPart * level.toNumber() &&
      rise > (t * scatter) / Math.sqrt(spread),
    daysWithin: allowedShift.times(start).toNumber() / rise,
    daysAsked: day.minus(first).toNumber(),
  };
}
