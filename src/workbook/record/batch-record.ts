/**
 * One batch as it is decided in the pane: what a row of the `Batches` table is made of. Amounts to weigh
 * are not here, since the row holds them as live formulas.
 */
import type { Exact } from "../../core/exact/exact";
import type { Base } from "../../core/reference/bases";
import type { BookValue } from "../../sheet/book";

export interface BatchLot {
  /** As it stands under Lot in `Titrations`: a lot may be a number there. */
  readonly lot: BookValue;
  /** Of the mass, %. */
  readonly percent: Exact;
  /** How much of it, in the unit beside it. */
  readonly amount: Exact;
  readonly unit: string;
}

/** What stands under Lots of several. */
export const lotsWords = (lots: readonly (BatchLot | undefined)[]): string =>
  lots.flatMap((each) => (each ? [String(each.lot)] : [])).join(" + ");

export interface BatchRecord {
  /** Days since 30 December 1899, as a spreadsheet counts them. */
  readonly date: number;
  readonly batch: string;
  /** The first and, mixed into it, any others. */
  readonly lots: readonly BatchLot[];
  readonly amount: Exact;
  /** As OILMASS takes it: "l", "us_gal". */
  readonly unit: string;
  /** C; undefined for a mass, and for the usual temperature. */
  readonly temperature: Exact | undefined;
  readonly base: Base["name"];
  readonly lyeLot: string;
  readonly assay: Exact;
  /** % of the oil's mass, pure. */
  readonly charge: Exact;
  readonly ratio: Exact;
  readonly limitFfa: Exact;
  /** % of the oil's mass; undefined when it was not measured. */
  readonly water: Exact | undefined;
  /** The titrant was made of this lye and taken as pure. */
  readonly isTitrantAsIfPure: boolean;
  readonly note: string;
}
