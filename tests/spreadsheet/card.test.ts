/**
 * The bench card to print in LibreOffice: the card is one page and all cautions the page behind, upright,
 * whatever it holds. Without it the test is left out, and says so; with REQUIRE_ALL=1 it fails.
 */
import { describe, expect, it } from "vitest";
import type { Book } from "../../src/sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { bookOf, cardOf } from "../workbook/card/computed";
import { mixOf, slipwayBatch } from "../workbook/record/batch-records";
import { printedBy } from "./printed";
import { hasLibreOffice } from "./xlsx/libreoffice";

const found = hasLibreOffice();
if (!found) {
  if (process.env.REQUIRE_ALL === "1") throw new Error("There is no LibreOffice.");
  console.warn("Left out: the bench card in LibreOffice. It is not installed.");
}

const bytesOf = (book: Book): Uint8Array => {
  const bytes = newXlsx(book);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
};

describe.runIf(found)("the bench card to print in LibreOffice", () => {
  it("takes a page and one of cautions behind it, with one lot, and with eight in gallons and pounds", async () => {
    const lots = ["SW-17", "NQ-41", "NQ-42", "NQ-43", "TW-08", "TW-09", "SW-18", "BL-03"];
    const eight = mixOf(...lots.map((lot) => [lot, "12.5"] as const));
    const note = "Used all the same: lot SW-18: the three lie 0.50 mL apart, and one is suspect.";
    const cards = [
      await cardOf(slipwayBatch, "metric"),
      await cardOf({ ...slipwayBatch, lots: eight, note }, "imperial"),
    ];
    expect(printedBy(cards.map((card) => bytesOf(bookOf(card))))).toEqual([2, 2]);
  });
});
