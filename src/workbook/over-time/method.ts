/**
 * Titrations that may be compared: the same burette and a titrant of about the same strength. A titrant
 * twice as strong makes drops count twice as much.
 */
import { counted } from "../../sheet/counted";
import type { Exact } from "../../core/exact/exact";
import type { RecordedTitration } from "../planning/read-titrations";
import { are } from "./series";

const withinFactor = 2;

export interface Method {
  readonly molarity: Exact | undefined;
  readonly titreStep: Exact | undefined;
}

/** Same Read to, strength within a factor of two; a row that does not say both is like none. */
export const isSameMethod = (one: Method, other: Method): boolean =>
  one.titreStep !== undefined &&
  other.titreStep?.eq(one.titreStep) === true &&
  one.molarity !== undefined &&
  other.molarity !== undefined &&
  one.molarity.lte(other.molarity.times(withinFactor)) &&
  other.molarity.lte(one.molarity.times(withinFactor));

export type DatedTitration = RecordedTitration & { readonly day: number };

export interface Comparable {
  /** In the order of time. */
  readonly rows: readonly DatedTitration[];
  /** What was left out, a sentence each. */
  readonly leftOut: readonly string[];
}

const isDated = (row: RecordedTitration): row is DatedTitration => row.day !== undefined;

/** The rows taken as the latest was. */
export function comparable(all: readonly RecordedTitration[]): Comparable {
  const dated = all.filter(isDated).sort((a, b) => a.day - b.day);
  const latest = dated.filter((row) => isSameMethod(row, row)).at(-1);
  const rows = latest ? dated.filter((row) => isSameMethod(row, latest)) : [];
  const undated = all.length - dated.length;
  const others = dated.length - rows.length;
  return {
    rows,
    leftOut: [
      ...(undated > 0
        ? [`${counted(undated, "titration")} without a date ${are(undated)} left out.`]
        : []),
      ...(others > 0
        ? [
            `${counted(others, "titration")} with another burette or a titrant of another strength ${are(others)} left out.`,
          ]
        : []),
    ],
  };
}
