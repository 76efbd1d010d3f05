/** The weigh-out sheet in the sample logbook, with what its formulas come to. */
import { exact } from "../../../src/core/exact/exact";
import { isFault } from "../../../src/sheet/port";
import type { Book, BookCell, BookSheet, BookValue } from "../../../src/sheet/book";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { weighOutSheet } from "../../../src/workbook/weigh-out/sheet";
import type { WeighOutRecord } from "../../../src/workbook/weigh-out/weigh-out-record";
import { openMemory } from "../../host/open-memory";
import { slipwayBatch } from "../record/batch-records";

/** Two lots to a target: the longest sheet but for more lots. */
export const slipwaySheet: WeighOutRecord = {
  batch: slipwayBatch,
  lots: [
    { lot: "SW-17", percent: exact("60"), worth: "Good" },
    { lot: "NQ-41", percent: exact("40"), worth: "Good" },
  ],
  oil: "used cooking oil",
  target: exact("1"),
  // by hand: 0.6 x 56.1 x 0.0998 x (14.6/3 - 0.15)/10.02 + 0.4 x 56.1 x 0.0998 x 2.3/10
  acidValue: exact("2.0963799156886225"),
  worth:
    "7.08 ± 0.12 mg KOH/g. Lot SW-17: Good. Lot NQ-41: Usable. Lot NQ-41: Not yet. Used all the same.",
  between: "between 963 and 990 g",
  route:
    "FFA 1.05 % (1 to under 3 %): a base batch with base for the acid; it makes more soap, so wash and settle longer; water not measured.",
  hasPounds: false,
};

/** As many lots as a batch may have, each with a long mark. */
export const fourLots: WeighOutRecord = {
  ...slipwaySheet,
  lots: ["SW-17", "NQ-41", "NQ-42", "SW-18"].map((lot) => ({
    lot,
    percent: exact("25"),
    worth: "",
  })),
  target: undefined,
};

/** The sheet first, then the table its formulas read. */
export async function computedBook(record: WeighOutRecord): Promise<Book> {
  const name = "Weigh-out B-118";
  const sheet = weighOutSheet(record, name);
  const titrations = sampleLogbook().sheets.filter((each) => each.name === "Titrations");
  const book: Book = { name: "weigh-out", sheets: [sheet, ...titrations] };
  const host = openMemory(book);
  const filled = async (each: BookSheet): Promise<BookSheet> => {
    const columns = Math.max(...each.rows.map((row) => row.length));
    const block = { sheet: each.name, row: 0, column: 0, rows: each.rows.length, columns };
    const found = await host.read([{ ask: "cells", block }]);
    const cells = isFault(found) ? undefined : found[0];
    if (cells?.kind !== "cells") throw new Error("no cells");
    const result = (cell: BookCell | null, row: number, column: number): BookCell | null => {
      const value = cells.values[row]?.[column];
      if (!cell?.formula) return cell;
      return typeof value === "object" || value === undefined
        ? { ...cell, results: [[{ error: value?.error ?? "#N/A" }]] }
        : { ...cell, value: value as BookValue };
    };
    return {
      ...each,
      rows: each.rows.map((row, at) => row.map((cell, column) => result(cell, at, column))),
    };
  };
  return { ...book, sheets: await Promise.all(book.sheets.map(filled)) };
}
