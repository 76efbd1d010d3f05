/**
 * The sheet to print in LibreOffice: two pages, upright, whatever it holds: what is weighed, and the
 * cautions. Without it the test is left
 * out, and says so; with REQUIRE_ALL=1 it fails.
 */
import { describe, expect, it } from "vitest";
import type { Book } from "../../src/sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import type { WeighOutRecord } from "../../src/workbook/weigh-out/weigh-out-record";
import { computedBook, fourLots, slipwaySheet } from "../workbook/weigh-out/computed";
import { printedBy } from "./printed";
import { hasLibreOffice } from "./xlsx/libreoffice";

const found = hasLibreOffice();
if (!found) {
  if (process.env.REQUIRE_ALL === "1") throw new Error("There is no LibreOffice.");
  console.warn("Left out: the sheet to print in LibreOffice. It is not installed.");
}

const bytesOf = (book: Book): Uint8Array => {
  const bytes = newXlsx(book);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return bytes;
};

describe.runIf(found)("the sheet to print in LibreOffice", () => {
  const sheets: readonly (readonly [string, WeighOutRecord])[] = [
    ["two lots to a target", slipwaySheet],
    ["four lots, pounds as well", { ...fourLots, hasPounds: true }],
  ];
  it("takes two pages, with two lots to a target and with four lots in pounds as well", async () => {
    const books = await Promise.all(sheets.map(([, record]) => computedBook(record)));
    const without = books.map((book) => ({ ...book, sheets: book.sheets.slice(1) }));
    const pages = printedBy([...books, ...without].map(bytesOf));
    for (const [at, [what]] of sheets.entries()) {
      expect((pages[at] ?? 0) - (pages[at + sheets.length] ?? 0), what).toBe(2);
    }
  });
});
