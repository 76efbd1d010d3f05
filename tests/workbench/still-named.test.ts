/** Rows that others look up: who finds nothing any more when they are deleted. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stillNamedWords } from "../../src/workbench/acts/act-words";
import { stillNamed } from "../../src/workbench/acts/still-named";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { type GridState, gridState } from "../../src/workbench/file/grid-state";
import { isoToSerial } from "../../src/xlsx";
import { batches } from "../../src/workbook/tables/batches";
import { blends } from "../../src/workbook/tables/blends";
import { type TableShape, typed } from "../../src/workbook/tables/column";
import { fuel } from "../../src/workbook/tables/fuel";
import { namings } from "../../src/workbook/tables/named-by";
import { lotsTable } from "../../src/workbook/tables/lots";
import { titrations } from "../../src/workbook/tables/titrations";

type Filled = Readonly<Record<string, string | number>>;

const day = (iso: string): number => Number(isoToSerial(iso, 1900));

/** A table of ours with what was typed; results stay empty, for only names and days count. */
function sheetOf(
  { name, columns }: Pick<TableShape, "name" | "columns">,
  filled: readonly Filled[],
) {
  const rows = [
    columns.map(({ heading }) => ({ value: heading })),
    ...filled.map((row) =>
      columns.map(({ heading }) => {
        const value = row[heading];
        return value === undefined ? null : { value };
      }),
    ),
  ];
  const area = { row: 0, column: 0, rows: rows.length, columns: columns.length };
  return { name, rows, columnWidths: [], tables: [{ name, ...area }], frozenRows: 0 };
}

const lots = lotsTable({ guidance: "", source: typed("Kitchen", 14, "") });

const workbooks: HeadlessWorkbook[] = [];
afterAll(() => {
  for (const workbook of workbooks) workbook.close();
});

async function stateOf(sheets: readonly ReturnType<typeof sheetOf>[]): Promise<GridState> {
  const workbook = await openHeadless({ name: "named", sheets });
  workbooks.push(workbook);
  return gridState(workbook.injector, workbook.cells);
}

/** Rows of a table, counted from 1, are deleted: what is asked. */
const asked = (state: GridState, sheet: string, first: number, count = 1): string => {
  const named = stillNamed({ do: "delete-rows", sheet, first, count }, state);
  return named.length === 0 ? "" : stillNamedWords(named);
};

describe("deleting rows that others look up", () => {
  let state: GridState;
  beforeAll(async () => {
    state = await stateOf([
      sheetOf(titrations, [
        { Lot: "K-12", Date: day("2026-09-01"), "Titre 1 mL": 2.4 },
        { Lot: "K-13", Date: day("2026-09-02"), "Titre 1 mL": 2.4 },
        { Lot: "K-14", Date: day("2026-09-03"), "Titre 1 mL": 2.4 },
        { Lot: "k-14", Date: day("2026-09-20"), "Titre 1 mL": 2.4 },
        { Lot: "K-15", Date: day("2026-09-03"), "Titre 1 mL": 2.4 },
        { Lot: "K-16", Date: day("2026-09-03"), "Titre 1 mL": 2.4 },
        { Date: day("2026-09-04") },
      ]),
      sheetOf(lots, [{ Lot: "K-12" }, { Lot: "K-15" }]),
      sheetOf(batches, [
        { Batch: "B-114", Date: day("2026-09-05"), Lots: "K-12" },
        { Batch: "B-115", Date: day("2026-09-05"), Lots: "k-12" },
        { Batch: "B-116", Date: day("2026-09-25"), Lots: "K-14" },
        { Batch: "B-117", Date: day("2026-09-06") },
        { Batch: "B-118", Date: day("2026-09-07") },
        { Batch: "B-118", Date: day("2026-09-08") },
      ]),
      sheetOf(blends, [
        { Batch: "B-117", Lot: "K-13", Day: day("2026-09-06") },
        { Batch: "B-117", Lot: "K-16", Day: day("2026-09-06") },
        { Batch: "B-118", Lot: "K-16", Day: day("2026-09-07") },
      ]),
      sheetOf(fuel, [{ Batch: "B-114" }, { Batch: "B-118" }]),
    ]);
  });

  it("names each batch of the lot, in the row itself or in Blends", () => {
    expect(asked(state, "Titrations", 1)).toBe(
      "Batches B-114 and B-115 use lot K-12: their acid value will be gone. Delete all the same? Undo brings it back.",
    );
    expect(asked(state, "Titrations", 1, 2)).toBe(
      "Batches B-114 and B-115 use lot K-12: their acid value will be gone. Batch B-117 uses lot K-13: its acid value will be gone. Delete all the same? Undo brings it back.",
    );
    expect(asked(state, "Titrations", 6)).toMatch(/^Batches B-117 and B-118 use lot K-16/);
    expect(asked(state, "Lots", 1)).toBe(
      "Batches B-114 and B-115 use lot K-12: its row of Lots will be gone. Delete all the same? Undo brings it back.",
    );
  });

  it("says of a lot that was never titrated that its row goes, and no acid value, which it has none of", async () => {
    const untitrated = await stateOf([
      sheetOf(titrations, [{ Lot: "K-12", Date: day("2026-09-01") }]),
      sheetOf(batches, [{ Batch: "B-114", Date: day("2026-09-05"), Lots: "K-12" }]),
    ]);
    expect(asked(untitrated, "Titrations", 1)).toBe(
      "Batch B-114 uses lot K-12, which was never titrated: its row of Titrations will be gone. Delete all the same? Undo brings it back.",
    );
  });

  it("asks nothing where another row of the same lot stays, where nobody uses it, or of a row not begun", () => {
    expect(asked(state, "Titrations", 3)).toBe("");
    expect(asked(state, "Titrations", 4)).toBe("");
    expect(asked(state, "Titrations", 3, 2)).toMatch(/^Batch B-116 uses lot K-14/);
    expect(asked(state, "Titrations", 5)).toBe("");
    expect(asked(state, "Titrations", 7)).toBe("");
    expect(asked(state, "Lots", 2)).toBe("");
    expect(
      stillNamed({ do: "delete-columns", sheet: "Titrations", first: 0, count: 1 }, state),
    ).toEqual([]);
    expect(
      stillNamed({ do: "insert-rows", sheet: "Titrations", before: 1, count: 1 }, state),
    ).toEqual([]);
  });

  it("asks of a batch that Blends or Fuel names, unless it stands there once more", () => {
    expect(asked(state, "Batches", 4)).toBe(
      "2 rows of Blends are of batch B-117: their day will be gone. Delete all the same? Undo brings it back.",
    );
    expect(asked(state, "Batches", 1)).toBe(
      "1 row of Fuel is of batch B-114: it will be in no row of Batches. Delete all the same? Undo brings it back.",
    );
    expect(asked(state, "Batches", 5)).toBe("");
    expect(asked(state, "Batches", 5, 2)).toMatch(/^1 row of Blends .* 1 row of Fuel /);
  });

  it("asks where the row that stays is of a day after the batch's, for the formula leaves that out", async () => {
    const later = await stateOf([
      sheetOf(titrations, [
        { Lot: "K-12", Date: day("2026-09-01"), "Titre 1 mL": 2.4 },
        { Lot: "K-12", Date: day("2026-09-20"), "Titre 1 mL": 2.4 },
      ]),
      sheetOf(batches, [{ Batch: "B-114", Date: day("2026-09-05"), Lots: "K-12" }]),
    ]);
    expect(asked(later, "Titrations", 1)).toMatch(/^Batch B-114 uses lot K-12/);
    // it was never looked up
    expect(asked(later, "Titrations", 2)).toBe("");
  });

  it("leaves tables alone that only have such a name", async () => {
    const others = await stateOf([
      sheetOf({ name: "Titrations", columns: [typed("Lot", 9, ""), typed("pH", 9, "")] }, [
        { Lot: "K-12" },
      ]),
      sheetOf(batches, [{ Batch: "B-114", Lots: "K-12" }]),
    ]);
    expect(asked(others, "Titrations", 1)).toBe("");
  });

  it("names a few and counts the others", async () => {
    const many = Array.from({ length: 9 }, (_, at) => `K-${String(at)}`);
    const crowd = await stateOf([
      sheetOf(
        titrations,
        many.map((Lot) => ({ Lot, "Titre 1 mL": 2.4 })),
      ),
      sheetOf(batches, [
        ...many.map((Lots) => ({ Batch: `B-${Lots}`, Lots })),
        ...many.map((_, at) => ({ Batch: `C-${String(at)}`, Lots: "K-0" })),
      ]),
    ]);
    expect(asked(crowd, "Titrations", 1)).toMatch(
      /^Batches B-K-0, C-0, C-1 and 7 more use lot K-0: their /,
    );
    const words = asked(crowd, "Titrations", 1, 9);
    expect(words).toContain("So it is with 6 other names in these rows.");
    expect(words).not.toContain("K-3");
  });

  it("goes by columns that the tables have, and by their days", () => {
    const columns = new Map(
      [titrations, batches, blends, fuel, lots].map(({ name, columns: all }) => [
        name,
        all.map(({ heading }) => heading),
      ]),
    );
    for (const { of, under, by } of namings) {
      expect(columns.get(of)).toContain(under);
      for (const { table, under: places, day: of } of by)
        for (const place of [...places, "Batch", ...(of ? [of] : [])])
          if (place !== "Second lot") expect(columns.get(table)).toContain(place);
    }
  });
});
