/** What the line through a titrant's own checks says on a day: how strong it is, and when it is old. */
import { computed, exact, hundred } from "../../core/exact/exact";
import { type Outcome, isProblem } from "../../core/problem/problem";
import { quantity } from "../../core/quantity/quantity";
import { monthDays, type OnDay, strengthOn } from "../../core/record/strength-line";
import type { TitrantHistory } from "./titrant-history";

/** Of a day: a whole one may come out a little less. */
const roundingError = 1e-9;

export interface TitrantLine {
  /** Days as a spreadsheet counts them. */
  readonly first: number;
  readonly asked: number;
  readonly checks: number;
  /** mol/L on the day asked, and ± percent of it (95 %). */
  readonly strength: number;
  readonly percent: number;
  /**
   * ± percent to titrate with. Scatter about the line knows nothing of what all checks share, a balance or
   * KHP that is off: it is never below that of one check.
   */
  readonly surePercent: number;
  /** Change since the first check, percent of what the line has there: below 0 where it is lost. */
  readonly since: number;
  /** It changes more than chance explains. */
  readonly isChanging: boolean;
  /** The last whole day on which it is within 1 % of its first; undefined where it does not change. */
  readonly within: number | undefined;
  /** It changes, and that day is over. */
  readonly isOld: boolean;
}

const onDays = ({ checks }: TitrantHistory): OnDay[] =>
  checks.map(({ day, strength }) => [exact(Math.floor(day)), quantity("mol/L", strength)]);

/** @returns a problem with fewer than three checks, or where all are of one day */
export function titrantLine(history: TitrantHistory, day: number): Outcome<TitrantLine> {
  const line = strengthOn(onDays(history), exact(day));
  if (isProblem(line)) return line;
  const { strength, change, daysAsked, daysWithin, isChanging } = line;
  const first = Math.floor(history.checks[0]?.day ?? day);
  const aDay = change.times(strength).div(hundred).div(monthDays);
  const start = strength.minus(aDay.times(daysAsked));
  const percent = computed(line.halfWidth).div(strength).times(hundred).toNumber();
  return {
    first,
    asked: day,
    checks: history.checks.length,
    strength: strength.toNumber(),
    percent,
    surePercent: Math.max(percent, history.latest.percent ?? 0),
    since: strength.minus(start).div(start).times(hundred).toNumber(),
    isChanging,
    within: isChanging ? first + Math.floor(daysWithin + roundingError) : undefined,
    isOld: isChanging && daysAsked > daysWithin,
  };
}
