/** The columns of `Batches` that say of which lots a batch is made, beside `Lots`. */
import type { BatchRecord } from "../record/batch-record";
import { countInBlends, firstInBlends, firstLot, inBlends } from "./batch-cells";
import { calculated, type Column, typed } from "./column";

/** Where the workbook has no table `Blends`: a second lot, by its share of the mass. */
export const secondLot: readonly Column<BatchRecord>[] = [
  typed("Second lot", 10, "The lot that is mixed into the first, as in Titrations.", {
    of: ({ lots: [, other] }) => other?.lot,
    tells: true,
  }),
  typed("Second lot %", 10, "Its share of the mass, in percent.", {
    format: "0.0",
    of: ({ lots: [, other] }) => other?.percent,
  }),
];

/** Where it has one. */
export const ofBlends: readonly Column<BatchRecord>[] = [
  calculated(
    inBlends,
    "0",
    "Rows of this batch in Blends; 0 for a batch of one lot.",
    countInBlends,
    9,
  ),
  calculated(firstLot, "General", "The lot whose kind of oil is counted with.", firstInBlends, 10),
];
