import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { cellsFromFile } from "../../../src/adopt/recognising/sheet-cells";
import { isWithin } from "../../../src/taskpane/logbook/ours";
import { whichFirst } from "../../../src/taskpane/logbook/which-first";
import { isFileProblem, openXlsx } from "../../../src/xlsx";

/** The sheets on which our own tables stand, each from its third row and first column on. */
const ourSheets = ["Lots", "Titrations", "Batches", "Blends", "Titrants"];

function tablesOf(file: string, ours: readonly string[]) {
  const book = openXlsx(new Uint8Array(readFileSync(`sample-workbooks/${file}`)));
  if (isFileProblem(book)) throw new Error(`${file} does not open`);
  const blocks = ours.map((sheet) => ({ sheet, row: 2, column: 0, rows: 1, columns: 60 }));
  return book.sheets.flatMap((sheet) => {
    const cells = cellsFromFile(book, sheet);
    return recogniseSheet(cells).map((guess) => ({
      guess,
      cells,
      remembered: undefined,
      ...(isWithin(cells.sheet, guess.place, blocks) ? { isOurs: true as const } : {}),
    }));
  });
}

const sample = tablesOf("logbook.xlsx", ourSheets);
const old = tablesOf("old-logbook.xlsx", []);

const firstOf = (found: typeof sample) => {
  const isTable = ({ guess, isOurs }: (typeof sample)[number]) => guess.isLogbook && !isOurs;
  const { tables, others } = whichFirst({
    tables: found.filter(isTable),
    others: found.filter((each) => !isTable(each)),
  });
  expect([...tables, ...others]).toHaveLength(found.length);
  return tables[0]?.guess.sheet;
};

/** Places and no tables: a failure prints what it was tried with. */
const anyOrder = (all: readonly unknown[]) =>
  fc.shuffledSubarray([...all.keys()], { minLength: all.length, maxLength: all.length });

const put = <T>(all: readonly T[], order: readonly number[]): T[] =>
  order.flatMap((at) => all.slice(at, at + 1));

describe("the table that is looked at first", () => {
  it("is the titrations of a workbook of ours, whatever blocks of sums stand on its sheets", () => {
    fc.assert(
      fc.property(anyOrder(sample), (order) => {
        const found = put(sample, order);
        expect(found.some(({ guess, isOurs }) => guess.isLogbook && !isOurs)).toBe(true);
        expect(firstOf(found)).toBe("Titrations");
      }),
    );
  });

  it("is somebody's own logbook where one stands beside our tables, before any block of sums", () => {
    const both = [...old, ...sample];
    fc.assert(
      fc.property(anyOrder(both), (order) => {
        expect(firstOf(put(both, order))).toBe("Oil book");
      }),
    );
  });

  it("is the first of those that tell as much: months stay in the order of their sheets", () => {
    const months = old
      .slice(0, 1)
      .flatMap((book) =>
        ["May", "June", "July"].map((sheet) => ({ ...book, guess: { ...book.guess, sheet } })),
      );
    expect(months).toHaveLength(3);
    expect(whichFirst({ tables: months, others: [] }).tables).toEqual(months);
  });
});
