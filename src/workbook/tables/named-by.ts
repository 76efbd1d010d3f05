/** Which of our tables look rows of another up by their names: what they lose when no such row is left. */
import { batchesName, blendsName } from "./batch-cells";
import { fuelName } from "./fuel-cells";
import { lotsName } from "./lots";
import { readingHeadings, titrationsName } from "./titration-cells";

/** A row that names another. */
export interface Namer {
  readonly table: string;
  /** The columns in which it does. */
  readonly under: readonly string[];
  /** The column with its batch's day: what is of a later day was not looked up. */
  readonly day?: string;
}

export interface Naming {
  /** The table that is looked up, and the column of its names. */
  readonly of: string;
  readonly under: string;
  readonly by: readonly Namer[];
  readonly loses: "acid value" | "row of Lots" | "day" | "row of Batches";
  /** Where none of these columns is filled in, there is no such thing to lose: the row alone goes. */
  readonly madeOf?: readonly string[];
}

/** The column of the batch that a row is of, in each of these tables. */
export const batchHeading = "Batch";
/** The column of a titration's own day. */
export const ownDay = "Date";

const ofLots: readonly Namer[] = [
  { table: batchesName, under: ["Lots", "Second lot"], day: "Date" },
  { table: blendsName, under: ["Lot"], day: "Day" },
];
const byBatch = (table: string): readonly Namer[] => [{ table, under: [batchHeading] }];

export const namings: readonly Naming[] = [
  {
    of: titrationsName,
    under: "Lot",
    by: ofLots,
    loses: "acid value",
    madeOf: readingHeadings.titres,
  },
  {
    of: lotsName,
    under: "Lot",
    by: ofLots.map(({ table, under }) => ({ table, under })),
    loses: "row of Lots",
  },
  { of: batchesName, under: batchHeading, by: byBatch(blendsName), loses: "day" },
  { of: batchesName, under: batchHeading, by: byBatch(fuelName), loses: "row of Batches" },
];
