import { describe, expect, it } from "vitest";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { catalogue } from "../../src/functions/catalogue";
import { bookOf, placeOf, shownAt, withBook } from "./book";

const type = (workbook: HeadlessWorkbook, address: string, typed: string | number | null) =>
  workbook.type({ sheet: "Sheet", ...placeOf(address) }, [[typed]]);

describe("cells in", () => {
  it("takes blank cells of a range as not filled in, never as 0", () =>
    withBook(bookOf([[2.4, null, 2.5, "=TITRE.CORRECTED(A1:C1)"]]), (workbook) => {
      expect(shownAt(workbook, "D1")).toBe(2.45);
    }));

  it("tells a blank cell that is given but empty from one that is left out", () =>
    withBook(
      bookOf([
        [2.3, null, "=TITRE.CORRECTED(A1,B1)", "=TITRE.CORRECTED(A1)", "=TITRE.CORRECTED(A1,)"],
      ]),
      (workbook) => {
        expect(shownAt(workbook, "C1")).toBe("#N/A");
        expect(shownAt(workbook, "D1")).toBe(2.3);
        expect(shownAt(workbook, "E1")).toBe(2.3);
      },
    ));

  it("passes #N/A on and refuses every other error", () =>
    withBook(
      bookOf([
        ["=NA()", "=1/0", "=TITRE.CORRECTED(A1)", "=TITRE.CORRECTED(B1)", "=TITRE.CORRECTED(1/0)"],
      ]),
      (workbook) => {
        expect(shownAt(workbook, "C1")).toBe("#N/A");
        expect(shownAt(workbook, "D1")).toBe("#VALUE!");
        expect(shownAt(workbook, "E1")).toBe("#VALUE!");
      },
    ));

  it("refuses booleans and text where a number belongs", () =>
    withBook(
      bookOf([
        [true, "2,4", "=TITRE.CORRECTED(A1)", "=TITRE.CORRECTED(B1)", "=TITRE.CORRECTED(2=2)"],
      ]),
      (workbook) => {
        for (const address of ["C1", "D1", "E1"]) {
          expect(shownAt(workbook, address)).toBe("#VALUE!");
        }
      },
    ));

  it("reads whole columns, names in any case and references to other sheets", () =>
    withBook(
      bookOf([
        [2.4, "=titre.corrected(A:A)"],
        [2.5, "=Titre.Corrected(Sheet!A1:A2)"],
      ]),
      (workbook) => {
        expect(shownAt(workbook, "B1")).toBe(2.45);
        expect(shownAt(workbook, "B2")).toBe(2.45);
      },
    ));

  it("reads a table by the names of its columns", () =>
    withBook(
      bookOf(
        [
          ["Titre 1 mL", "Titre 2 mL", "Blank 1 mL", "Corrected"],
          [
            2.4,
            2.5,
            0.1,
            "=TITRE.CORRECTED(Lots[[#This Row],[Titre 1 mL]:[Titre 2 mL]],Lots[[#This Row],[Blank 1 mL]])",
          ],
          [
            3.4,
            null,
            0.4,
            "=TITRE.CORRECTED(Lots[[#This Row],[Titre 1 mL]],Lots[[#This Row],[Blank 1 mL]])",
          ],
          [null, null, null, null],
          ["=TITRE.CORRECTED(Lots[Titre 1 mL])", null, null, null],
        ],
        [{ name: "Lots", row: 0, column: 0, rows: 3, columns: 4 }],
      ),
      (workbook) => {
        expect(shownAt(workbook, "D2")).toBeCloseTo(2.35, 12);
        expect(shownAt(workbook, "D3")).toBe(3);
        expect(shownAt(workbook, "A5")).toBe(2.9);
      },
    ));

  it("answers too few arguments with #N/A", () =>
    withBook(bookOf([["=TITRE.ACIDVALUE(2.3)"]]), (workbook) => {
      expect(shownAt(workbook, "A1")).toBe("#N/A");
    }));
});

describe("cells out", () => {
  it("spills in the shape of the titres, with empty text where one is not filled in", () =>
    withBook(
      bookOf([
        [5.61, '=TITRE.EACHACIDVALUE(A1:A3,"neutralised",0.1,5.61)'],
        [null, null],
        [11.22, null],
        ["=SUM(B1:B3)", "=B3"],
      ]),
      (workbook) => {
        // By hand: 56.1 * 0.1 * 5.61 / 5.61 = 5.61, and twice that.
        expect(shownAt(workbook, "B1")).toBeCloseTo(5.61, 12);
        expect(shownAt(workbook, "B2")).toBe("");
        expect(shownAt(workbook, "B3")).toBeCloseTo(11.22, 12);
        expect(shownAt(workbook, "A4")).toBeCloseTo(16.83, 12);
        expect(shownAt(workbook, "B4")).toBeCloseTo(11.22, 12);
        const anchor = { sheet: "Sheet", ...placeOf("B1") };
        expect(workbook.cells.spilledFrom({ sheet: "Sheet", ...placeOf("B3") })).toEqual(anchor);
        expect(workbook.cells.spilledFrom({ sheet: "Sheet", ...placeOf("A4") })).toBeUndefined();
      },
    ));

  it("does not spill over a cell that holds something", () =>
    withBook(
      bookOf([
        [2.4, "=TITRE.EACHACIDVALUE(A1:A2,,0.1,7.05)"],
        [2.5, "mine"],
      ]),
      (workbook) => {
        expect(shownAt(workbook, "B1")).toBe("#SPILL!");
        expect(shownAt(workbook, "B2")).toBe("mine");
      },
    ));

  it("answers booleans as booleans", () =>
    withBook(
      bookOf([
        ["=TITRE.CONCORDANT({2.25,2.35},0.1)", '=IF(TITRE.CONCORDANT({2.2,2.9},0.1),"yes","no")'],
      ]),
      (workbook) => {
        expect(shownAt(workbook, "A1")).toBe(true);
        expect(shownAt(workbook, "B1")).toBe("no");
      },
    ));

  it("stands inside other formulas, and its errors can be caught", () =>
    withBook(
      bookOf([
        [
          "=ROUND(TITRE.CORRECTED({2.4,2.5,2.45},0.15)*10,0)",
          '=IFERROR(TITRE.CORRECTED("none"),"check")',
          "=TITRE.FFAFROMACIDVALUE(TITRE.ACIDVALUE(2.3,0.1,7.05))",
        ],
      ]),
      (workbook) => {
        expect(shownAt(workbook, "A1")).toBe(23);
        expect(shownAt(workbook, "B1")).toBe("check");
        // By hand: 2.3 * 0.1 * 282 / (10 * 7.05) = 0.92
        expect(shownAt(workbook, "C1")).toBeCloseTo(0.92, 12);
      },
    ));
});

describe("recalculation", () => {
  it("follows an input that changes, is emptied, and is filled in again", () =>
    withBook(
      bookOf([[2.4, 2.5, 0.15, "=TITRE.CORRECTED(A1:B1,C1)", "=D1*10"]]),
      async (workbook) => {
        expect(shownAt(workbook, "E1")).toBeCloseTo(23, 12);
        await type(workbook, "A1", 3.5);
        expect(shownAt(workbook, "D1")).toBe(2.85);
        expect(shownAt(workbook, "E1")).toBe(28.5);
        await type(workbook, "C1", null);
        expect(shownAt(workbook, "D1")).toBe("#N/A");
        await type(workbook, "C1", 0.15);
        expect(shownAt(workbook, "E1")).toBe(28.5);
      },
    ));

  it("goes on in every other cell while one is wrong", () =>
    withBook(
      bookOf([
        [2.4, "=TITRE.CORRECTED(A1)"],
        [2.5, "=TITRE.CORRECTED(A2)"],
        ["=TITRE.NOSUCH(1)", "=1+1"],
      ]),
      async (workbook) => {
        await type(workbook, "A1", "lots");
        expect(shownAt(workbook, "B1")).toBe("#VALUE!");
        await type(workbook, "A2", 2.6);
        expect(shownAt(workbook, "B2")).toBe(2.6);
        await type(workbook, "A1", 2.7);
        expect(shownAt(workbook, "B1")).toBe(2.7);
        expect(shownAt(workbook, "B3")).toBe(2);
        await type(workbook, "C1", "=TITRE.CORRECTED(A1:A2)");
        expect(shownAt(workbook, "C1")).toBe(2.65);
      },
    ));
});

/** Help pages show about six figures. */
function expectNear(shown: unknown, value: number): void {
  expect(shown).toBeTypeOf("number");
  expect(Math.abs(Number(shown) - value)).toBeLessThanOrEqual(1e-5 * Math.abs(value));
}

describe("the catalogue's own examples", () => {
  it.each(catalogue)("$id gives what its help page says", ({ example }) =>
    withBook(bookOf([[example.formula]]), async (workbook) => {
      // a machine that is busy works it out in more than one go
      const first = () => workbook.value({ sheet: "Sheet", row: 0, column: 0 });
      await expect.poll(first, { timeout: 30_000 }).not.toBeNull();
      const expected = Array.isArray(example.gives) ? example.gives : [[example.gives]];
      for (const [row, cells] of (expected as unknown[][]).entries()) {
        for (const [column, value] of cells.entries()) {
          const shown = workbook.value({ sheet: "Sheet", row, column });
          if (typeof value === "number") expectNear(shown, value);
          else expect(shown).toBe(value);
        }
      }
    }),
  );
});
