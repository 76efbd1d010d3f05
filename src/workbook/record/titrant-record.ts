/**
 * A titrant as it was made or checked on a day: what a row of the `Titrants` table is made of. Where KHP
 * readings stand, the row works strength and ± out of them; else it shows what is stated.
 */
import type { Exact } from "../../core/exact/exact";
import type { Base } from "../../core/reference/bases";
import type { neutralisedWord } from "../../core/titration/neutralised";

/** How a strength may be known, in the words of the tables. */
export const waysKnown = ["weighing", "KHP", "certificate", "label"] as const;

export interface PhthalateReading {
  /** g of KHP. */
  readonly mass: Exact;
  /** mL of titrant it took. */
  readonly titre: Exact;
}

export interface TitrantRecord {
  /** Days since 30 December 1899, as a spreadsheet counts them. */
  readonly date: number;
  /** The bottle, as it is marked. */
  readonly titrant: string;
  readonly base: Base["name"];
  /** One of `waysKnown`. */
  readonly howKnown: string;
  /** mol/L by weighing, label or certificate; undefined where KHP readings say it. */
  readonly stated: Exact | undefined;
  readonly statedPercent: Exact | undefined;
  /** Up to three. */
  readonly phthalate: readonly PhthalateReading[];
  /** mL; undefined where nothing was titrated. */
  readonly blank: Exact | typeof neutralisedWord | undefined;
  /** Of the KHP; undefined: 100. */
  readonly purity: Exact | undefined;
  /** Smallest difference weighed, g, and read, mL. */
  readonly massStep: Exact | undefined;
  readonly titreStep: Exact | undefined;
  readonly note: string;
}
