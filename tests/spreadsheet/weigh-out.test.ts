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

const pages = (book: Book): number => {
  const bytes = newXlsx(book);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return printedBy(bytes);
};

describe.runIf(found)("the sheet to print in LibreOffice", () => {
  const sheets: readonly (readonly [string, WeighOutRecord])[] = [
    ["two lots to a target", slipwaySheet],
    ["four lots, pounds as well", { ...fourLots, hasPounds: true }],
  ];
  it.each(sheets)("takes two pages: %s", async (_, record) => {
    const book = await computedBook(record);
    const others = { ...book, sheets: book.sheets.slice(1) };
    expect(pages(book) - pages(others)).toBe(2);
  });
});
