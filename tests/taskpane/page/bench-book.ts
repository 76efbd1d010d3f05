/** A workbook with My bench filled in and nothing else: as a maker has it after the first day. */
import type { Book } from "../../../src/sheet/book";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { benchSheet } from "../../../src/workbook/tables/bench-sheet";

export const benchBook = (): Book => ({
  name: "A bench",
  sheets: [
    benchSheet({
      titrantBase: "KOH",
      molarity: "0.1",
      strengthPercent: "1",
      titreStep: "0.05",
      massStep: "0.01",
      base: "KOH",
      lotKOH: "K-207",
      assayKOH: "90",
      vessel: "80",
      chargeKOH: "7",
      chargeUnit: "g per litre",
      chargeIs: "pure base",
      unit: "US gal",
      amount: "55",
      ratio: "6",
      limit: "3",
    }),
  ],
});

/** The sample of a maker whose vessel holds 80 L, which its batches do not fit into. */
export function smallVesselBook(): Book {
  const book = sampleLogbook();
  return { ...book, sheets: [...book.sheets, benchSheet({ vessel: "80", unit: "L" })] };
}
