/** Batches for tests. */
import { exact } from "../../../src/core/exact/exact";
import type { BookValue } from "../../../src/sheet/book";
import type { BatchLot, BatchRecord } from "../../../src/workbook/record/batch-record";

/** A hundred litres of one lot. */
export const only = (lot: BookValue): BatchLot[] => [
  { lot, percent: exact("100"), amount: exact("100"), unit: "l" },
];

/** A hundred litres of several, by shares of the mass. */
export const mixOf = (
  ...shares: readonly (readonly [lot: string, percent: string])[]
): BatchLot[] =>
  shares.map(([lot, percent]) => ({
    lot,
    percent: exact(percent),
    amount: exact(percent),
    unit: "l",
  }));

/** A hundred litres of the sample's lot SW-17. */
export const slipwayBatch: BatchRecord = {
  date: 46_296,
  batch: "B-118",
  lots: only("SW-17"),
  amount: exact("100"),
  unit: "l",
  temperature: undefined,
  base: "KOH",
  lyeLot: "K-207",
  assay: exact("90"),
  charge: exact("0.765"),
  ratio: exact("6"),
  limitFfa: exact("5"),
  water: undefined,
  isTitrantAsIfPure: false,
  note: "",
};
