/** Batches for tests. */
import { exact } from "../../../src/core/exact/exact";
import type { BatchRecord } from "../../../src/workbook/record/batch-record";

/** A hundred litres of the sample's lot SW-17. */
export const slipwayBatch: BatchRecord = {
  date: 46_296,
  batch: "B-118",
  lot: "SW-17",
  second: undefined,
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
