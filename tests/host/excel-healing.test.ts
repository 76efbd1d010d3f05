import { afterEach, describe, expect, it } from "vitest";
import { ExcelHost } from "../../src/host/excel";
import { isFault } from "../../src/sheet/port";
import type { Book } from "../../src/sheet/book";
import { heal } from "../../src/workbook/healing/heal";
import { ExcelStandIn, installExcel } from "./excel/stand-in";
import { memoryBook } from "./open-memory";

/** The second name is never known, so that the cell waits for ever. */
const waiting = "=TITRE.ACIDVALUE(2.3,0.1,10)+NEVERKNOWN(1)";

const book: Book = {
  name: "test",
  sheets: [
    {
      name: "Log",
      rows: [
        [{ value: "Acid value" }, { value: "Lot" }],
        [{ formula: waiting, format: "0.00" }, { value: "NQ-41" }],
        [{ formula: waiting, format: "0.00" }, { formula: "=1+1" }],
        [],
        [{ formula: "=TITRE.ACIDVALUE(2.3,0.1,10)" }, { formula: "=NEVERKNOWN(2)" }],
      ],
      columnWidths: [],
      tables: [{ name: "Lots", row: 0, column: 0, rows: 3, columns: 2 }],
      frozenRows: 0,
    },
  ],
};

describe("asking waiting cells again through the program's own calls", () => {
  afterEach(() => {
    for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
  });

  it("reads and writes without misusing them, leaves every other cell alone, and can be undone", async () => {
    const standIn = new ExcelStandIn(memoryBook(book));
    installExcel(standIn);
    const before = structuredClone(standIn.model.book.sheets[0]?.cells);
    const healing = await heal(new ExcelHost(), () => Promise.resolve());
    if (isFault(healing)) throw new Error(healing.code);
    expect(healing).toMatchObject({ asked: 2, tries: 3 });
    expect(healing.left.mendable.map(({ block }) => [block.row, block.column])).toEqual([
      [1, 0],
      [2, 0],
    ]);
    expect(standIn.misuses).toEqual([]);
    expect(standIn.model.book.sheets[0]?.cells).toEqual(before);
    for (let tries = 0; tries < healing.tries; tries += 1) standIn.undo();
    expect(standIn.model.book.sheets[0]?.cells).toEqual(before);
  });
});
