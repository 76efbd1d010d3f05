/** What goes wrong in one formula of the embedded engine stays in its cell. */
import { describe, expect, it, vi } from "vitest";
import { IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import { IFormulaDependencyGenerator } from "@univerjs/engine-formula";
import { snapshotOf } from "../../src/workbench/snapshot";
import { bookOf, shownAt, withBook } from "./book";

const table = (columns: number, rows: number) => ({
  name: "Lots",
  row: 0,
  column: 0,
  rows,
  columns,
});

describe("one formula that fails", () => {
  it("is an error in its own cell, and everything else is worked out", () =>
    withBook(bookOf([['=SUBSTITUTE("a","a","b",5)', "=1+1", "=B1+1"]]), async (workbook) => {
      expect(shownAt(workbook, "C1")).toBe(3);
      await workbook.type({ sheet: "Sheet", row: 1, column: 0 }, [["=SUM(T[a'#b])", "=2+2"]]);
      expect(shownAt(workbook, "B2")).toBe(4);
    }));

  it.each(["Lot #", "Lot [1]", "Lot ]", "Lot '"])(
    "is not one that reads a table with the heading %s",
    (heading) => {
      const written = heading.replace(/['#[\]]/g, "'$&");
      return withBook(
        bookOf(
          [
            [heading, "Dose"],
            [2, `=SUM(Lots[${written}])`],
            [3, `=Lots[[#This Row],[${written}]]*2`],
            ["", "=SUM(Lots[Dose])"],
          ],
          [table(2, 3)],
        ),
        async (workbook) => {
          expect(shownAt(workbook, "B2")).toBe(5);
          expect(shownAt(workbook, "B3")).toBe(6);
          expect(shownAt(workbook, "B4")).toBe(11);
          await workbook.type({ sheet: "Sheet", row: 1, column: 0 }, [[4]]);
          expect(shownAt(workbook, "B4")).toBe(13);
        },
      );
    },
  );

  it("leaves the range it sorts as it was for all others", () =>
    withBook(
      bookOf([
        [3, "=SORT(A1:A3)", "=INDEX(A1:A3,1)"],
        [1, null, "=TITRE.MEANACIDVALUE(A1:A3,0.1,10)"],
        [2, null, '=TEXTJOIN(",",TRUE,A1:A3)'],
      ]),
      (workbook) => {
        expect(["B1", "B2", "B3"].map((at) => shownAt(workbook, at))).toEqual([1, 2, 3]);
        expect(shownAt(workbook, "C1")).toBe(3);
        expect(shownAt(workbook, "C3")).toBe("3,1,2");
      },
    ));

  it("is #NUM! where a result is no figure that a file could hold", () =>
    withBook(bookOf([["=1E300*1E300", "=SUM(A1,1)", "=EXP(1000)"]]), (workbook) => {
      expect(shownAt(workbook, "A1")).toBe("#NUM!");
      expect(shownAt(workbook, "B1")).toBe("#NUM!");
      expect(shownAt(workbook, "C1")).toBe("#NUM!");
    }));
});

describe("a workbook whose working out stops", () => {
  it("says so at once, and the next is worked out", () =>
    withBook(bookOf([[1, "=A1+1"]]), async (workbook) => {
      const generator = workbook.injector.get(IFormulaDependencyGenerator);
      const generate = vi.spyOn(generator, "generate").mockRejectedValueOnce(new Error("broken"));
      let heard = 0;
      workbook.working.failures.onStop(() => (heard += 1));
      await workbook.type({ sheet: "Sheet", row: 0, column: 0 }, [[2]]);
      expect(generate).toHaveBeenCalled();
      expect(heard).toBe(1);
      await workbook.type({ sheet: "Sheet", row: 0, column: 0 }, [[5]]);
      expect(shownAt(workbook, "B1")).toBe(6);
    }));

  it("leaves nothing behind for the workbook that is opened after it", () =>
    withBook(bookOf([[1, "=A1+1"]]), async (workbook) => {
      const generator = workbook.injector.get(IFormulaDependencyGenerator);
      vi.spyOn(generator, "generate").mockRejectedValueOnce(new Error("broken"));
      let heard = 0;
      workbook.working.failures.onStop(() => (heard += 1));
      await workbook.type({ sheet: "Sheet", row: 0, column: 0 }, [[2]]);
      expect(heard).toBe(1);
      const units = workbook.injector.get(IUniverInstanceService);
      const first = workbook.cells.names.unit;
      // the same addresses and texts, as a second file of the same kind has them
      const second = bookOf([[10, "=A1+1", "=SUM(A1:B1)"]]);
      units.createUnit(UniverInstanceType.UNIVER_SHEET, { ...snapshotOf(second), id: "second" });
      units.disposeUnit(first);
      units.focusUnit("second");
      await workbook.computed();
      // By hand: 10 + 1, 10 + 11, and with 20 in place of 10.
      expect([shownAt(workbook, "B1"), shownAt(workbook, "C1")]).toEqual([11, 21]);
      await workbook.type({ sheet: "Sheet", row: 0, column: 0 }, [[20]]);
      expect([shownAt(workbook, "B1"), shownAt(workbook, "C1")]).toEqual([21, 41]);
      expect(heard).toBe(1);
    }));
});

describe("a cell whose result programs do not agree on", () => {
  it("is doubtful where the last bit of a figure decides what is written of it", () =>
    withBook(
      bookOf([[2.285953177257525, 0.1, 2.45, '=A1&"|"', '=B1+0.2&"|"', '=C1&"|"', '=1/3&"|"']]),
      (workbook) => {
        const { names } = workbook.cells;
        const sheet = names.sheetId("Sheet");
        const doubted = [3, 4, 5, 6].map((column) =>
          workbook.working.doubts.isDoubtful({ unit: names.unit, sheet, row: 0, column }),
        );
        expect(doubted).toEqual([true, false, false, false]);
      },
    ));

  it("is known as doubtful, until its inputs are what they agree on", () =>
    withBook(bookOf([["2,5", "=A1*2", '=IF(A1="","",1)']]), async (workbook) => {
      const { names } = workbook.cells;
      const isDoubtful = (column: number) =>
        workbook.working.doubts.isDoubtful({
          unit: names.unit,
          sheet: names.sheetId("Sheet"),
          row: 0,
          column,
        });
      expect(isDoubtful(1)).toBe(true);
      expect(isDoubtful(2)).toBe(false);
      await workbook.type({ sheet: "Sheet", row: 0, column: 0 }, [[2.5]]);
      expect(shownAt(workbook, "B1")).toBe(5);
      expect(isDoubtful(1)).toBe(false);
    }));

  it("stays doubtful while something else is typed, however it refers to what it reads", () => {
    const formulas = [
      "=VLOOKUP(3,Lots[],2,FALSE)",
      "=VLOOKUP(3,Lots[[Lot]:[Titre]],2,FALSE)",
      "=SUM(Lots[Titre])&LOOKUP(3,Lots[Lot],Lots[Words])*2",
      "=LOOKUP(3,Lots[Lot],Lots[Titre])",
      "=VLOOKUP(3,A2:C3,2,FALSE)",
      "=MAX(MAP(A2:A3,LAMBDA(lot,lot*2)))*C3",
    ];
    const rows = [
      ["Lot", "Titre", "Words"],
      [2, 8, 1],
      [3, null, "2,5"],
    ];
    const lots = { name: "Lots", row: 0, column: 0, rows: 3, columns: 3 };
    return withBook(
      bookOf([...rows, [1], ...formulas.map((formula) => [formula])], [lots]),
      async (workbook) => {
        const { names } = workbook.cells;
        const doubted = () =>
          formulas.filter((_, at) =>
            workbook.working.doubts.isDoubtful({
              unit: names.unit,
              sheet: names.sheetId("Sheet"),
              row: 4 + at,
              column: 0,
            }),
          );
        expect(doubted()).toEqual(formulas);
        await workbook.type({ sheet: "Sheet", row: 3, column: 0 }, [[7]]);
        expect(doubted()).toEqual(formulas);
        // once the cells are filled, nothing is doubtful
        await workbook.type({ sheet: "Sheet", row: 2, column: 1 }, [[9, 2.5]]);
        expect(doubted()).toEqual([]);
      },
    );
  });
});
