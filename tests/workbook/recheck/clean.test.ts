import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isFileProblem, openXlsx } from "../../../src/workbook/xlsx";
import {
  isKnown,
  lacks,
  type LogbookMapping,
  mappingFrom,
  withColumn,
  withConstant,
} from "../../../src/workbook/recognising/mapping";
import { recogniseSheet } from "../../../src/workbook/recognising/recognise";
import { cellsFromFile } from "../../../src/workbook/recognising/sheet-cells";
import { makeLogbook, type Truth } from "../recognising/logbooks";
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

/** Those of the twelve layouts whose invented figures agree with each other. */
const consistent = [0, 1, 3, 4, 5, 7, 8, 10, 11];

describe("clean logbooks in other layouts", () => {
  it.each(consistent.map((index) => [makeLogbook(index, "all", 1).name, index] as const))(
    "raise no false alarm: %s",
    (_, index) => {
      let figures = 0;
      for (const seed of [1, 2, 3, 4]) {
        const made = makeLogbook(index, "all", seed);
        for (const guess of recogniseSheet(made.cells)) {
          const report = recheckAtOnce([
            { mapping: truthful(mappingFrom(guess), made.truth), cells: made.cells },
          ]);
          expect(report.findings).toEqual([]);
          figures += report.figures;
        }
      }
      expect(figures).toBeGreaterThan(60);
    },
  );
});

/** The mapping with every column as it is, and what no column says: 90 % KOH, 7 g/L. */
function truthful(guessed: LogbookMapping, truth: readonly Truth[]): LogbookMapping {
  let mapping = guessed;
  for (const { column, role, headingRow } of truth) {
    const held = mapping.columns.find((each) => each.column === column);
    if (!held || headingRow !== mapping.place.headingRow) continue;
    if (held.role !== role) mapping = withColumn(mapping, column, role);
  }
  for (const [role, value] of [
    ["base", "KOH"],
    ["assay", "90"],
    ["baseCharge", "7"],
  ] as const) {
    if (!isKnown(mapping, role)) mapping = withConstant(mapping, role, value);
  }
  const inGrams = <T extends { readonly role: string }>(each: T): T =>
    each.role === "baseCharge" ? { ...each, unit: "g/L" } : each;
  return {
    ...mapping,
    columns: mapping.columns.map(inGrams),
    constants: mapping.constants.map(inGrams),
  };
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
