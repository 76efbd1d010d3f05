/**
 * How this hand scattered before: the titrations on record that are like the one at hand, pooled. The
 * figures are those of the day it was begun, so that an old row never changes by what comes later.
 */
import { computed } from "../../../core/exact/exact";
import { isProblem } from "../../../core/problem/problem";
import type { Millilitre } from "../../../core/quantity/quantity";
import { withoutAccidents } from "../../../core/record/accident";
import type { UsualScatter } from "../../../core/record/pooled-scatter";
import { usualFreedom, usualScatter } from "../../../core/record/usual-scatter";
import { limits } from "../../../core/reference/limits";
import { isSameMethod } from "../../../workbook/over-time/method";
import type { OnRecord, RecordedTitration } from "../../../workbook/planning/read-titrations";
import { sheetDay } from "../../widgets/day";
import type { Draft } from "../draft";
import { standing } from "../readings";
import type { Strength } from "../strength";

/** What the record says of the titration at hand. */
export interface Usual {
  /** Undefined while there are too few titrations like this one. */
  readonly scatter: UsualScatter | undefined;
  /** Titrations pooled, each with two readings or more. */
  readonly titrations: number;
  /** Left out: their readings lie so far apart that something happened. */
  readonly accidents: number;
  /** Titrations of three titres that are still wanted; 0 once there is a scatter. */
  readonly more: number;
}

/**
 * Degrees of freedom from which on a record is used: five titrations of three titres. Student t is 2.23
 * there, 14 % above that of an endless record; at four it is 2.78, 42 % above.
 */
const fewestFreedom = 10;
/** Of one titration of three titres. */
const freedomOfThree = 2;

/** Digits that the row keeps of it. */
const digitsKept = 4;

interface Method {
  readonly strength: Strength;
  readonly step: Millilitre;
}

/** The row that this very draft became. */
function isItself(row: RecordedTitration, draft: Draft, day: number): boolean {
  const titres = standing(draft);
  return (
    row.day === day &&
    row.lot === draft.words.lot.trim() &&
    row.titres.length === titres.length &&
    titres.every(({ titre }, place) => row.titres[place]?.eq(titre))
  );
}

/** More makes no difference, and no function takes more. */
const mostFreedom = Number(limits.usualFreedom.to);

const rounded = (value: number): number =>
  computed(value).toSignificantDigits(digitsKept).toNumber();

/** Rows of before with two readings or more, taken as this one is. */
const alike = (rows: readonly RecordedTitration[], draft: Draft, { strength, step }: Method) => {
  const today = sheetDay(draft.begunOn);
  return rows.filter(
    (row) =>
      isSameMethod(row, { molarity: strength.molarity, titreStep: step }) &&
      (row.day === undefined || row.day <= today) &&
      !isItself(row, draft, today) &&
      !isProblem(usualFreedom([row])),
  );
};

function pooled(before: readonly RecordedTitration[], step: Millilitre): Usual {
  const rows = withoutAccidents(before, step);
  const free = usualFreedom(rows);
  const scatter = usualScatter(rows, step);
  const freedom = isProblem(free) ? 0 : Math.min(free, mostFreedom);
  const more = Math.max(0, Math.ceil((fewestFreedom - freedom) / freedomOfThree));
  return {
    scatter: more > 0 || isProblem(scatter) ? undefined : { scatter: rounded(scatter), freedom },
    titrations: rows.length,
    accidents: before.length - rows.length,
    more,
  };
}

/** A long record is pooled when something it goes by has changed, not at every key. */
const latest = new WeakMap<OnRecord, { readonly key: string; readonly usual: Usual }>();

/** @returns undefined while strength or step are not known, and where the table has no place for it */
export function usualOf(
  record: OnRecord | undefined,
  draft: Draft,
  strength: Strength | undefined,
  step: Millilitre | undefined,
): Usual | undefined {
  if (!record?.hasUsual || strength === undefined || step === undefined) return undefined;
  const titres = standing(draft).map(({ titre }) => titre);
  const by = [step, strength.molarity, draft.begunOn, draft.words.lot, ...titres];
  const key = JSON.stringify(by);
  const known = latest.get(record);
  if (known?.key === key) return known.usual;
  const usual = pooled(alike(record.rows, draft, { strength, step }), step);
  latest.set(record, { key, usual });
  return usual;
}
