/** A table of ours grows when something is typed or pasted right below it, and one undo takes back both. */
import { ICommandService, RedoCommand, UndoCommand } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import type { Found } from "../../src/sheet/port";
import { WorkbenchHost } from "../../src/host/workbench";
import type { Typed } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { GrowTables } from "../../src/workbench/grid/grow-tables";
import type { Book } from "../../src/sheet/book";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { titrations } from "../../src/workbook/tables/titrations";
import { bookOf } from "./book";

const opened = async (book: Book) => {
  const open = await openHeadless(book);
  const host = new WorkbenchHost(open.injector);
  new GrowTables(open.injector, open.cells, host);
  const pause = () => new Promise((done) => setTimeout(done, 50));
  const command = async (id: string) => {
    await open.injector.get(ICommandService).executeCommand(id);
    await pause();
    await open.computed();
  };
  return {
    host,
    cells: open.cells,
    type: async (sheet: string, row: number, column: number, rows: Typed[][]) => {
      await open.type({ sheet, row, column }, rows);
      await pause();
      await open.computed();
    },
    undo: () => command(UndoCommand.id),
    redo: () => command(RedoCommand.id),
    close: () => {
      open.close();
    },
    table: async (name: string): Promise<Found | undefined> =>
      (await host.read([{ ask: "table", name }]))[0],
  };
};

const columnOf = (heading: string) =>
  titrations.columns.findIndex((column) => column.heading === heading);

/** Lot, stage, oil ... as they stand in the table, with three titres, a blank and a mass. */
const reading: Typed[] = titrations.columns.map(({ heading }): Typed => {
  const values: Record<string, Typed> = {
    Date: 46_300,
    Lot: "NQ-50",
    "Titrant base": "KOH",
    "Molarity mol/L": 0.1,
    "Titre 1 mL": 2.4,
    "Titre 2 mL": 2.5,
    "Blank 1 mL": 0.15,
    "Mass g": 10,
  };
  return values[heading] ?? null;
});
const inputs = reading.slice(0, columnOf("Corrected titre mL"));

describe("a table of ours in the workbench", () => {
  it("takes in the row that is typed right below it, cell by cell, with its formulas", async () => {
    const book = await opened(sampleLogbook());
    const before = await book.table("Titrations");
    const row = 12;
    await book.type("Titrations", row, columnOf("Lot"), [["NQ-50"]]);
    expect(await book.table("Titrations")).toMatchObject({ block: { row: 2, rows: 11 } });
    for (const { heading, formula } of titrations.columns) {
      const place = { sheet: "Titrations", row, column: columnOf(heading) };
      expect(book.cells.formula(place)).toBe(formula ?? "");
    }
    await book.type("Titrations", row, 0, [inputs]);
    const corrected = { sheet: "Titrations", row, column: columnOf("Corrected titre mL") };
    // By hand: (2.4 + 2.5) / 2 - 0.15.
    expect(book.cells.value(corrected)).toBeCloseTo(2.3, 12);
    await book.undo();
    await book.undo();
    expect(await book.table("Titrations")).toEqual(before);
    expect(book.cells.value({ sheet: "Titrations", row, column: columnOf("Lot") })).toBe(null);
    expect(book.cells.formula(corrected)).toBe("");
    await book.redo();
    expect(await book.table("Titrations")).toMatchObject({ block: { rows: 11 } });
    expect(book.cells.formula(corrected)).not.toBe("");
    book.close();
  });

  it("takes in every row of a block that is pasted below it, in one undo", async () => {
    const book = await opened(sampleLogbook());
    const before = await book.table("Titrations");
    await book.type("Titrations", 12, 0, [inputs, inputs, inputs]);
    expect(await book.table("Titrations")).toMatchObject({ block: { rows: 13 } });
    const results = [12, 13, 14].map((row) =>
      book.cells.value({ sheet: "Titrations", row, column: columnOf("Corrected titre mL") }),
    );
    for (const result of results) expect(result).toBeCloseTo(2.3, 12);
    await book.undo();
    expect(await book.table("Titrations")).toEqual(before);
    book.close();
  });

  it("stays as it is when something is typed further down, beside it, or emptied below it", async () => {
    const book = await opened(sampleLogbook());
    const before = await book.table("Titrations");
    await book.type("Titrations", 13, 1, [["a remark"]]);
    await book.type("Titrations", 12, titrations.columns.length, [["beside"]]);
    await book.type("Titrations", 12, 1, [[null]]);
    expect(await book.table("Titrations")).toEqual(before);
    book.close();
  });

  it("is a table that calls our functions, or has our name: no other grows", async () => {
    const theirs = await opened(
      bookOf(
        [
          ["Ferry", "Fuel"],
          ["Heron", "=1+1"],
        ],
        [{ name: "Fleet", row: 0, column: 0, rows: 2, columns: 2 }],
      ),
    );
    await theirs.type("Sheet", 2, 0, [["Tern"]]);
    expect(await theirs.table("Fleet")).toMatchObject({ block: { rows: 2 } });
    theirs.close();
  });
});
