/** What was found in the fuel of one batch on one day: what a row of the `Fuel` table is made of. */
import type { Exact } from "../../core/exact/exact";
import type { Base } from "../../core/reference/bases";
import type { BookValue } from "../../sheet/book";

/** Under Washes where it was not washed: a 0 would say nothing. */
export const notWashed = "none";

export interface FuelRecord {
  /** Days since 30 December 1899, as a spreadsheet counts them. */
  readonly date: number;
  /** As it stands under Batch in `Batches`. */
  readonly batch: BookValue;
  readonly washes: Exact | string | undefined;
  readonly acid:
    | {
        /** mL, up to three. */
        readonly titres: readonly Exact[];
        /** mL, or the word neutralised. */
        readonly blank: Exact | string;
        readonly mass: Exact;
        readonly molarity: Exact;
        readonly titreStep: Exact | undefined;
        readonly massStep: Exact | undefined;
        readonly percent: Exact | undefined;
      }
    | undefined;
  /** Both end points in one flask; free base undefined: colourless from the start. */
  readonly soap:
    | {
        readonly base: Base["name"];
        readonly freeBase: Exact | undefined;
        readonly titre: Exact;
        readonly blank: Exact | string;
        readonly mass: Exact;
        readonly molarity: Exact;
        readonly titreStep: Exact | undefined;
        readonly percent: Exact | undefined;
      }
    | undefined;
  /** % of the mass. */
  readonly water: Exact | undefined;
  readonly trial: string;
  readonly litres: Exact | undefined;
  readonly note: string;
}
