/**
 * One titration as it stands on the bench slip: what the pane collects, and what a row of the
 * `Titrations` table is made of. Figures are exact as typed; the results are not here, since the row
 * holds them as live formulas.
 */
import { type neutralisedWord } from "../../core/titration/neutralised";
import type { Exact } from "../../core/exact/exact";
import type { Base } from "../../core/reference/bases";
import type { UsualScatter } from "../../core/record/pooled-scatter";
import type { Stage } from "../../core/titration/stages";

export interface OmittedReading {
  /** 1 for Titre 1. */
  readonly number: number;
  readonly titre: Exact;
  readonly reason: string;
}

export interface TitrationRecord {
  /** Days since 30 December 1899, as a spreadsheet counts them. */
  readonly date: number;
  readonly lot: string;
  readonly stage: Stage;
  readonly oil: string;
  readonly operator: string;
  readonly titrantBase: Base["name"];
  readonly molarity: Exact;
  readonly strengthSetBy: string;
  readonly indicator: string;
  readonly secondsHeld: number | undefined;
  /** mL, by place; null where that reading was omitted or never taken. */
  readonly titres: readonly (Exact | null)[];
  /** mL, up to three; or the solvent was neutralised. */
  readonly blanks: readonly Exact[] | typeof neutralisedWord;
  /** One mass for all, or one for each titre place, g. */
  readonly masses: Exact | readonly (Exact | null)[];
  /** Smallest difference read, mL. */
  readonly titreStep: Exact | undefined;
  /** Smallest difference weighed, g. */
  readonly massStep: Exact | undefined;
  /** The sample was measured: massStep is the balance step worth as much. */
  readonly isByVolume: boolean;
  readonly titrantPercent: Exact | undefined;
  readonly burettePercent: Exact | undefined;
  /** How the hand scattered before, as of this day; undefined where it is not used. */
  readonly usual: UsualScatter | undefined;
  readonly omitted: readonly OmittedReading[];
  readonly note: string;
}
