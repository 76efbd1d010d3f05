/**
 * What is held: formulas that may come to something else here than in other programs stay as the file
 * has them, with all that reads them, and a file that no longer holds asks to be worked out.
 */
import { describe, expect, it } from "vitest";
import { sayDoubt, sayReason } from "../../src/workbench/holding/reasons";
import { readCellName } from "../../src/xlsx/cell-address";
import { bookOf, partsOf, partsWith, sheetOf, zipped } from "../xlsx/files";
import { type FileInGrid, inGrid, opened } from "./file";

const at = (address: string) => ({
  sheet: "Data",
  ...(readCellName(address) ?? { row: -1, column: -1 }),
});

/** Cells as a file writes them, each in a row of its own number: address, formula, result. */
function book(...cells: readonly (readonly [string, string, string?])[]): Uint8Array {
  const rows = new Map<number, string[]>();
  for (const [address, formula, result] of cells) {
    const row = at(address).row + 1;
    const value = result === undefined ? "" : `<v>${result}</v>`;
    const written = formula === "" ? value : `<f>${formula}</f>${value}`;
    rows.set(row, [...(rows.get(row) ?? []), `<c r="${address}">${written}</c>`]);
  }
  return bookOf(
    [...rows]
      .sort(([a], [b]) => a - b)
      .map(([row, inRow]) => `<row r="${row}">${inRow.join("")}</row>`)
      .join(""),
  );
}

const reason = (file: FileInGrid, address: string): string | undefined => {
  const { sheet, row, column } = at(address);
  const found = file.holding.reasonAt(sheet, row, column);
  return found && sayReason(found, sheet, (key) => key);
};

async function savedCell(file: FileInGrid, address: string) {
  const saved = await file.saved();
  const { row, column } = at(address);
  const cell = opened(saved).sheets[0]?.cells.find(
    (each) => each.row === row && each.column === column,
  );
  return { cell, asksAnew: opened(saved).isUnsettled };
}

const type = (file: FileInGrid, address: string, typed: string | number | null) =>
  file.grid.type(at(address), [[typed]]);

describe("a formula of a file", () => {
  it("is worked out where it comes to what the file says, and is saved so", () =>
    inGrid(book(["A1", "", "2"], ["B1", "A1*3", "6"]), async (file) => {
      expect(reason(file, "B1")).toBeUndefined();
      await type(file, "A1", 5);
      // By hand: 5 x 3.
      expect(await savedCell(file, "B1")).toMatchObject({ cell: { value: 15 }, asksAnew: false });
    }));

  it("is held where it comes to something else, and so is all that reads it", () =>
    inGrid(
      book(["A1", "", "2"], ["B1", "A1*3", "7"], ["C1", "B1+1", "8"], ["D1", "A1+1", "3"]),
      async (file) => {
        expect(reason(file, "B1")).toMatch(/another figure than the file has/);
        expect(reason(file, "C1")).toBeDefined();
        expect(reason(file, "D1")).toBeUndefined();
        await type(file, "A1", 5);
        expect(file.grid.value(at("C1"))).toBe(8);
        expect(await savedCell(file, "B1")).toMatchObject({ cell: { value: 7 }, asksAnew: true });
        expect((await savedCell(file, "D1")).cell?.value).toBe(6);
        expect((await file.edits()).leftAsTheyWere).toBe(2);
      },
    ));

  it("asks for nothing where what changed is not among what it goes by", () =>
    inGrid(book(["A1", "", "2"], ["A2", "", "2"], ["B1", "A1*3", "7"]), async (file) => {
      await type(file, "A2", 9);
      expect(await savedCell(file, "B1")).toMatchObject({ cell: { value: 7 }, asksAnew: false });
      expect((await file.edits()).leftAsTheyWere).toBe(0);
    }));

  it.each([
    ["AGGREGATE(9,5,A1:A3)", "6"],
    ["OFFSET(A1,1,0)", "2"],
    ["ROWS(A:A)", "1048576"],
    ["RAND()", "0.5"],
    ["A1:A3*2", "2"],
    ["SUM((A1:A2,A3))", "6"],
    ['GETPIVOTDATA("x",A1)', "4"],
    ["[1]Other!A1", "4"],
  ])("=%s is held, and so is what reads it", (formula, result) =>
    inGrid(
      book(
        ["A1", "", "1"],
        ["A2", "", "2"],
        ["A3", "", "3"],
        ["C1", formula, result],
        ["D1", "SUM(C1:C2)", result],
      ),
      async (file) => {
        expect(reason(file, "C1")).toBeDefined();
        expect(reason(file, "D1")).toBe("It is worked out from C1, which is grey too.");
        await type(file, "A2", 20);
        expect((await savedCell(file, "C1")).cell?.value).toBe(Number(result));
        expect((await savedCell(file, "D1")).cell?.value).toBe(Number(result));
      },
    ),
  );

  it("is held where it leads back to itself, with what reads it", () =>
    inGrid(
      book(["A1", "", "1"], ["B1", "C1+A1", "2"], ["C1", "B1/2", "1"], ["D1", "C1*2", "2"]),
      async (file) => {
        expect(reason(file, "B1")).toBeDefined();
        await type(file, "A1", 8);
        expect(await savedCell(file, "D1")).toMatchObject({ cell: { value: 2 }, asksAnew: true });
      },
    ));

  it("is worked out again once what it waited for is a figure", () =>
    inGrid(book(["B1", "RAND()", "7"], ["C1", "B1+1", "8"]), async (file) => {
      await type(file, "B1", 2);
      expect(reason(file, "C1")).toBeUndefined();
      // By hand: 2 + 1.
      expect(await savedCell(file, "C1")).toMatchObject({ cell: { value: 3 }, asksAnew: false });
    }));

  it("is worked out where the program that saved the file did not know a function", () =>
    inGrid(
      bookOf(
        '<row r="1"><c r="A1"><v>2</v></c><c r="B1" t="e"><f>_xldudf_TITRE_CORRECTED(A1)</f><v>#NAME?</v></c><c r="C1" t="e"><f>B1*2</f><v>#NAME?</v></c></row>',
      ),
      (file) => {
        expect(file.grid.value(at("C1"))).toBe(4);
        expect(reason(file, "C1")).toBeUndefined();
      },
    ));

  it("is worked out where the file vouches for no result", () => {
    const parts = partsWith(
      sheetOf('<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f>A1*3</f><v>0</v></c></row>'),
    );
    const workbook = (parts["xl/workbook.xml"] ?? "").replace(
      "</sheets>",
      '</sheets><calcPr fullCalcOnLoad="1"/>',
    );
    return inGrid(zipped({ ...parts, "xl/workbook.xml": workbook }), (file) => {
      expect(file.grid.value(at("B1"))).toBe(6);
    });
  });

  it("stays with its answers where it answers over many cells", () =>
    inGrid(
      bookOf(
        '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f t="array" ref="B1:B2">A1:A2*RAND()</f><v>5</v></c></row><row r="2"><c r="A2"><v>3</v></c><c r="B2"><v>6</v></c><c r="C2"><f>B2+1</f><v>7</v></c></row>',
      ),
      async (file) => {
        expect(file.grid.value(at("B2"))).toBe(6);
        expect(reason(file, "B2")).toBe("The formula in B1 answers here, and is not worked out.");
        expect(reason(file, "C2")).toBe("It is worked out from B2, which is grey too.");
        await type(file, "A1", 9);
        expect(await savedCell(file, "B2")).toMatchObject({ cell: { value: 6 }, asksAnew: true });
      },
    ));

  it("of a what-if table shows what it came to, and what reads it is held", () =>
    inGrid(
      bookOf(
        '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f t="dataTable" ref="B1:B2" dt2D="0" dtr="0" r1="A1"/><v>5</v></c><c r="C1"><f>B1+B2</f><v>11</v></c></row><row r="2"><c r="B2"><v>6</v></c></row>',
      ),
      async (file) => {
        expect(file.grid.value(at("B2"))).toBe(6);
        expect(reason(file, "C1")).toBeDefined();
        await type(file, "A1", 9);
        expect(await savedCell(file, "C1")).toMatchObject({ cell: { value: 11 }, asksAnew: true });
        expect(partsOf(await file.saved())["xl/worksheets/sheet1.xml"]).toContain(
          '<f t="dataTable" ref="B1:B2" dt2D="0" dtr="0" r1="A1"/><v>5</v>',
        );
      },
    ));
});

describe("a subtotal", () => {
  const rows = (middle: string, ...more: string[]) =>
    bookOf(
      `<row r="1"><c r="A1"><v>1</v></c><c r="C1"><f>SUBTOTAL(109,A1:A3)</f><v>6</v></c></row><row r="2"${middle}><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>${more.join("")}`,
    );

  it("is worked out where every row is shown", () =>
    inGrid(rows(""), async (file) => {
      await type(file, "A2", 20);
      // By hand: 1 + 20 + 3.
      expect(await savedCell(file, "C1")).toMatchObject({ cell: { value: 24 }, asksAnew: false });
    }));

  it.each([' hidden="1"', ' ht="0" customHeight="1"'])(
    "is held where a row it reads is not shown: %s",
    (hidden) =>
      inGrid(rows(hidden), async (file) => {
        expect(reason(file, "C1")).toBe("It uses SUBTOTAL over rows that are hidden or filtered.");
        await type(file, "A1", 10);
        expect(await savedCell(file, "C1")).toMatchObject({ cell: { value: 6 }, asksAnew: true });
      }),
  );

  it("does not mind hidden rows elsewhere", () =>
    inGrid(rows("", '<row r="4" hidden="1"><c r="A4"><v>9</v></c></row>'), (file) => {
      expect(reason(file, "C1")).toBeUndefined();
    }));

  it("is held from when another subtotal stands among what it reads", () =>
    inGrid(rows(""), async (file) => {
      await type(file, "A3", "=SUBTOTAL(9,A1:A2)");
      expect(reason(file, "C1")).toBe("It uses SUBTOTAL over other subtotals.");
      // By hand: 1 + 2.
      expect((await savedCell(file, "A3")).cell).toMatchObject({ value: 3 });
      expect(await savedCell(file, "C1")).toMatchObject({ cell: { value: 6 }, asksAnew: true });
      await type(file, "A3", 5);
      // By hand: 1 + 2 + 5.
      expect((await savedCell(file, "C1")).cell).toMatchObject({ value: 8 });
    }));
});

describe("a formula that goes by the day", () => {
  /** Days from 1899-12-30 to a day, by the calendar of the machine. */
  const daysTo = (day: Date): number =>
    Math.round(
      (Date.UTC(day.getFullYear(), day.getMonth(), day.getDate()) - Date.UTC(1899, 11, 30)) /
        86_400_000,
    );
  const file = () =>
    book(
      ["A1", "", "45000"],
      ["B1", "TODAY()-A1", "12"],
      ["C1", 'IF(B1>9,"long","short")', "0"],
      ["D1", "A1*2", "90000"],
      ["E1", "B1+RAND()", "12.5"],
    );

  it("is worked out for today, though the file has what it came to on another day", () =>
    inGrid(file(), (opened) => {
      expect(reason(opened, "B1")).toBeUndefined();
      expect(reason(opened, "C1")).toBeUndefined();
      expect(opened.grid.value(at("B1"))).toBe(daysTo(new Date()) - 45_000);
      expect(reason(opened, "E1")).toBe("It uses RAND.");
    }));

  it("changes nothing in a file in which nothing was changed", () =>
    inGrid(file(), async (opened) => {
      expect((await opened.edits()).edits).toEqual([]);
    }));

  it("is saved as it is shown, with what was changed", () =>
    inGrid(file(), async (opened) => {
      await type(opened, "A1", 46_000);
      expect((await savedCell(opened, "B1")).cell?.value).toBe(daysTo(new Date()) - 46_000);
      await type(opened, "A1", 45_000);
      await type(opened, "F1", 1);
      expect((await savedCell(opened, "B1")).cell?.value).toBe(daysTo(new Date()) - 45_000);
      expect((await savedCell(opened, "C1")).cell?.value).toBe("long");
      expect(await savedCell(opened, "E1")).toMatchObject({
        cell: { value: 12.5 },
        asksAnew: true,
      });
    }));

  it("is saved as it is shown where it is an array of one cell, as the program writes calls", () => {
    const array = '<c r="B1"><f t="array" ref="B1">TODAY()-A1</f><v>12</v></c>';
    const bytes = zipped(partsWith(sheetOf(`<row r="1"><c r="A1"><v>45000</v></c>${array}</row>`)));
    return inGrid(bytes, async (opened) => {
      expect((await opened.edits()).edits).toEqual([]);
      await type(opened, "F1", 1);
      expect((await savedCell(opened, "B1")).cell?.value).toBe(daysTo(new Date()) - 45_000);
    });
  });

  it("is worked out where it does so by a name", () => {
    const parts = partsWith(
      sheetOf('<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f>thisDay-A1</f><v>3</v></c></row>'),
    );
    const workbook = (parts["xl/workbook.xml"] ?? "").replace(
      "</sheets>",
      '</sheets><definedNames><definedName name="thisDay">TODAY()</definedName></definedNames>',
    );
    return inGrid(zipped({ ...parts, "xl/workbook.xml": workbook }), (opened) => {
      expect(reason(opened, "B1")).toBeUndefined();
      expect(opened.grid.value(at("B1"))).toBe(daysTo(new Date()) - 2);
    });
  });
});

describe("a result that programs do not agree on", () => {
  const list = ({ holding }: FileInGrid) => [
    ...[...holding.cells()].map(({ key }) => key),
    ...[...holding.doubtfulCells()].map(({ key }) => key),
  ];

  it("has its reason in its cell, as what reads it has, and both are in the list", () =>
    inGrid(book(["A1", "", "2"], ["B1", "LEN(A1)", "1"], ["C1", "B1*1", "1"]), async (file) => {
      expect(list(file)).toEqual([]);
      await type(file, "A1", true as never);
      const doubt = (address: string) => {
        const { sheet, row, column } = at(address);
        const found = file.holding.doubtAt(sheet, row, column);
        return found && sayDoubt(found, sheet, (key) => key);
      };
      expect(doubt("A1")).toBeUndefined();
      expect(doubt("B1")).toMatch(/^Spreadsheet programs come to different results/);
      expect(doubt("C1")).toMatch(/^It is worked out from B1, whose result is not saved/);
      expect(list(file)).toEqual([1, 2]);
      expect((await savedCell(file, "C1")).asksAnew).toBe(true);
      await type(file, "A1", 3);
      expect(doubt("B1")).toBeUndefined();
      expect(list(file)).toEqual([]);
    }));
});

describe("a formula that is typed", () => {
  it("is written without a result where it is not proven, and so goes on what reads it", () =>
    inGrid(book(["A1", "", "2"], ["B1", "", "4"], ["C1", "B1*2", "8"]), async (file) => {
      await type(file, "B1", "=OFFSET(A1,0,0)");
      expect(reason(file, "B1")).toBe("It uses OFFSET.");
      expect(reason(file, "C1")).toBe("It is worked out from B1, which is grey too.");
      const { cell, asksAnew } = await savedCell(file, "B1");
      expect(cell).toMatchObject({ formula: "=OFFSET(A1,0,0)" });
      expect(cell?.value).toBeUndefined();
      expect(asksAnew).toBe(true);
      expect((await savedCell(file, "C1")).cell?.value).toBe(8);
    }));

  it("gets its result where it is proven, and what is typed over a held one counts", () =>
    inGrid(book(["A1", "", "2"], ["B1", "RAND()", "4"], ["C1", "B1*2", "8"]), async (file) => {
      await type(file, "B1", "=A1+1");
      // By hand: 2 + 1, and twice that.
      expect((await savedCell(file, "B1")).cell).toMatchObject({ formula: "=A1+1", value: 3 });
      expect((await savedCell(file, "C1")).cell?.value).toBe(6);
    }));

  it("that is not worked out does not hold for ever what reads the cell", () =>
    inGrid(book(["A1", "", "2"], ["B1", "", "4"], ["C1", "B1*2", "8"]), async (file) => {
      await type(file, "B1", "=OFFSET(A1,0,0)");
      await type(file, "B1", 5);
      expect(await savedCell(file, "C1")).toMatchObject({ cell: { value: 10 }, asksAnew: false });
    }));
});
