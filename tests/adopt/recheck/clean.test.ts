import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Action, firstState, reduce, shownTable } from "../../../src/taskpane/logbook/state";
import type { ReadTable } from "../../../src/taskpane/logbook/found-table";
import { roleOf } from "../../../src/adopt/recognising/roles";
import { isFileProblem, openXlsx } from "../../../src/xlsx";
import { isKnown, type LogbookMapping, mappingFrom } from "../../../src/adopt/recognising/mapping";
import { lacks } from "../../../src/adopt/recognising/lacks";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { cellsFromFile } from "../../../src/adopt/recognising/sheet-cells";
import { makeLogbook, type Truth } from "../recognising/logbooks";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";

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
            {
              mapping: agreedInPane(
                { guess, cells: made.cells, remembered: undefined },
                made.truth,
              ),
              cells: made.cells,
            },
          ]);
          expect(report.findings).toEqual([]);
          figures += report.figures;
        }
      }
      expect(figures).toBeGreaterThan(60);
    },
  );
});

/**
 * As a person puts it right in the pane: every column as it is, units that nothing names, and what no
 * column says: 90 % KOH, 7 g/L of it pure.
 */
function agreedInPane(table: ReadTable, truth: readonly Truth[]): LogbookMapping {
  let state = reduce(firstState, { do: "found", tables: [table] });
  const mapping = (): LogbookMapping => shownTable(state)?.mapping as LogbookMapping;
  const act = (action: Action): void => {
    state = reduce(state, action);
  };
  for (const { column, role, headingRow } of truth) {
    const held = mapping().columns.find((each) => each.column === column);
    if (held && headingRow === mapping().place.headingRow && held.role !== role)
      act({ do: "column", column, role });
  }
  for (const { column, role, unit } of mapping().columns) {
    const usual = role === "baseCharge" ? "g/L" : unit === undefined ? roleOf(role).units[0] : unit;
    if (usual !== undefined) act({ do: "column", column, role, unit: usual });
  }
  act({ do: "basis", role: "baseCharge", basis: "pure" });
  if (!isKnown(mapping(), "base")) act({ do: "constant", role: "base", value: "KOH" });
  if (!isKnown(mapping(), "assay")) act({ do: "typed", figure: "assay", value: "90" });
  if (!isKnown(mapping(), "baseCharge")) {
    act({ do: "typed", figure: "charge", value: "7" });
    act({ do: "typed", figure: "charge", unit: "g/L" });
    act({ do: "typed", figure: "charge", basis: "pure" });
  }
  return mapping();
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
