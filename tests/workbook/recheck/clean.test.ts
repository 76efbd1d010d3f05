import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isFileProblem, openXlsx } from "../../../src/workbook/xlsx";
import { lacks, mappingFrom } from "../../../src/workbook/recognising/mapping";
import { recogniseSheet } from "../../../src/workbook/recognising/recognise";
import { cellsFromFile } from "../../../src/workbook/recognising/sheet-cells";
import { type Logbook, recheckAtOnce } from "../../../src/workbook/recheck/recheck";

function logbooks(file: string): Logbook[] {
  const book = openXlsx(new Uint8Array(readFileSync(file)));
  if (isFileProblem(book)) throw new Error("the sample does not open");
  return book.sheets
    .filter(({ name }) => name === "Titrations" || name === "Batches")
    .flatMap((sheet) => {
      const cells = cellsFromFile(book, sheet);
      return recogniseSheet(cells).map((guess) => ({ mapping: mappingFrom(guess), cells }));
    });
}

describe("the clean logbook of the samples", () => {
  const books = logbooks("sample-workbooks/logbook.xlsx");

  it("is recognised: two tables, nothing lacking", () => {
    expect(books.map(({ mapping }) => mapping.sheet)).toEqual(["Titrations", "Batches"]);
    expect(books.flatMap(({ mapping }) => lacks(mapping))).toEqual([]);
  });

  it("raises no false alarm", () => {
    const report = recheckAtOnce(books);
    expect(report.findings).toEqual([]);
    expect(report.latent).toEqual([]);
    expect(report.figures).toBeGreaterThan(30);
  });
});
