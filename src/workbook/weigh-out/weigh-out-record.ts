/** What a sheet to print holds beside the batch itself. */
import type { Exact } from "../../core/exact/exact";
import type { BatchRecord } from "../record/batch-record";
import type { BookValue } from "../../sheet/book";

export interface WeighOutLot {
  readonly lot: BookValue;
  /** Of the mass. */
  readonly percent: Exact;
  /** What stood under Worth of its titration; "" where nothing did. */
  readonly worth: string;
}

export interface WeighOutRecord {
  readonly batch: BatchRecord;
  /** All lots of the batch, also more than the row of a table holds. */
  readonly lots: readonly WeighOutLot[];
  /** As OILMASS takes it: a name, or "" for an oil that has none. */
  readonly oil: string;
  /** % FFA the mix was to meet; undefined when shares were typed. */
  readonly target: Exact | undefined;
  /** Of the batch when the sheet was made, mg KOH/g, as the sheet works it out. */
  readonly acidValue: Exact;
  /** Between what the lye is by the titration's doubt, in words; "" when that is not known. */
  readonly between: string;
  /** The acid value with its ±, and what it is worth, in words. */
  readonly worth: string;
  /** The route's sentence when the sheet was made. */
  readonly route: string;
  /** Weights in pounds and ounces as well. */
  readonly hasPounds: boolean;
}
