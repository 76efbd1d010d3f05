/**
 * Text to file to text gives the same tree, for formulas of a grammar of its own (../formula/grammar);
 * first as texts, then through the bytes of whole workbooks. 200,000 were run once on 2026-11-29.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isSameFormula } from "../../src/sheet/formula/same-formula";
import { print } from "../../src/sheet/formula/print";
import { type Edit, isFileProblem, patchXlsx, sayFile } from "../../src/xlsx";
import { formulaFromFile } from "../../src/xlsx/formulas/from-file";
import { filledDown } from "../../src/xlsx/formulas/shared";
import { storedFormula } from "../../src/xlsx/formulas/to-file";
import { bracketed, treeOf } from "../sheet/formula/trees";
import { formulas, type Made } from "../sheet/formula/grammar/formulas";
import { opened, patched, sheetIn } from "./answers";
import { bookOf, partsOf } from "./files";

const count = Number(process.env.FORMULAS ?? 5_000);
/** Formulas in one workbook, below each other in the second column of a table. */
const most = 250;

/** A workbook with the table Log, and a formula in each of its rows. */
function written(made: readonly Made[]): Uint8Array {
  const cell = (row: number, column: number, value: string): Edit => ({
    do: "set-cell",
    sheet: "Data",
    row,
    column,
    content: { kind: "value", value },
  });
  return patched(bookOf(""), [
    {
      do: "add-table",
      sheet: "Data",
      name: "Log",
      area: { row: 0, column: 0, rows: made.length + 1, columns: 2 },
    },
    cell(0, 0, "Lot"),
    cell(0, 1, "Titre 1"),
    ...made.map(({ formula }, index): Edit => ({
      do: "set-cell",
      sheet: "Data",
      row: index + 1,
      column: 1,
      content: { kind: "formula", formula, result: 1 },
    })),
  ]);
}

describe("a formula of the standard's grammar", () => {
  const parts = ["first", "second", "third", "fourth"];
  const title =
    "is read as the tree it was made as, stored as files hold it, shown as the same tree";
  it.each(parts)(`${title}: the %s quarter of them`, () => {
    fc.assert(
      fc.property(formulas, ({ formula, tree, stored, back }) => {
        const { text } = storedFormula(formula, "Log!A1", "Log");
        const shown = formulaFromFile(text);
        const found = [bracketed(treeOf(formula)), text, bracketed(treeOf(shown))];
        const wanted = [tree, stored, back];
        // One look at all of it: so many runs are quick only so.
        if (found.join("\n") !== wanted.join("\n")) expect(found).toEqual(wanted);
        if (!isSameFormula(formula, shown, "Log")) throw new Error(`${formula} is not ${shown}`);
      }),
      { numRuns: count / parts.length },
    );
  });

  it("comes out of a workbook's bytes as it went in", () => {
    const several = fc.array(formulas, { minLength: 1, maxLength: most, size: "max" });
    fc.assert(
      fc.property(several, (made) => {
        const bytes = written(made);
        const cells = sheetIn(opened(bytes), "Data").cells.filter(({ column }) => column === 1);
        expect(cells.slice(1).map(({ formula = "" }) => bracketed(treeOf(formula)))).toEqual(
          made.map(({ back }) => back),
        );
      }),
      { numRuns: Math.ceil(count / 1000) },
    );
  });

  it("is printed so that it is read as the same tree", () => {
    fc.assert(
      fc.property(formulas, ({ formula, tree }) => {
        const printed = print(treeOf(formula));
        if (bracketed(treeOf(printed)) !== tree) throw new Error(`${formula} became ${printed}`);
      }),
      { numRuns: Math.ceil(count / 10) },
    );
  });

  it("filled down moves rows alone, and as far in two steps as in one", () => {
    // Columns come out in capitals.
    const without = (text: string) => text.replace(/\d+/g, "").toUpperCase();
    fc.assert(
      fc.property(formulas, fc.nat({ max: 9 }), fc.nat({ max: 9 }), ({ formula }, one, other) => {
        fc.pre(!formula.includes("1048576"));
        const moved = filledDown(formula, one);
        const isMoved = without(moved) === without(formula);
        const isKept = filledDown(formula, 0).toUpperCase() === formula.toUpperCase();
        const isSame = filledDown(moved, other) === filledDown(formula, one + other);
        if (!isMoved || !isKept || !isSame) throw new Error(`${formula} became ${moved}`);
      }),
      { numRuns: Math.ceil(count / 10) },
    );
  });

  it("says something else once a call, a cell, a sign or a text of it is another", () => {
    const changes: readonly (readonly [string, string])[] = [
      ["=(TITRE.CATALYST(A1))/2", "=(TITRE.CATALYSTT(A1))/2"],
      ["=(STDEV.S(A1:A3))/2", "=(STDEV.SS(A1:A3))/2"],
      ["=A1+$B$2", "=A1+B2"],
      ["=-2^2", "=-(2^2)"],
      ["=A1-(B1-C1)", "=A1-B1-C1"],
      ["=(@A1):B1", "=@A1:B1"],
      ["=A1:(B1#)", "=A1:B1#"],
      ['="KOH"', '="koh"'],
      ["=SUM((A1,B1))", "=SUM(A1,B1)"],
      ["=IF(A1,,2)", "=IF(A1,2)"],
      ["='1st'!A1", "='2nd'!A1"],
      ["=Log[Lot]", "=Log[@Lot]"],
      ["={1,2;3,4}", "={1,2,3,4}"],
      ["=A1%", "=A1"],
      ["=[1]Log!A1", "=[2]Log!A1"],
    ];
    for (const [one, other] of changes)
      expect([one, isSameFormula(one, other, "")]).toEqual([one, false]);
  });

  it.each(["\u0001", "\u000b", "\ud800", "\uffff"])(
    "is refused with a character that no file holds",
    (mark) => {
      const set = { do: "set-cell", sheet: "Data", row: 0, column: 0 } as const;
      const content = { kind: "formula", formula: `="a${mark}"`, result: "" } as const;
      const found = patchXlsx(bookOf(""), [{ ...set, content }]);
      expect(isFileProblem(found) && sayFile(found)).toBe(
        "Data!A1: the formula holds a character that no file can hold.",
      );
    },
  );

  it("keeps line breaks, carriage returns and marks of XML in the bytes", () => {
    const formula = '="a\r\nb"&\r\n"<&>]]>"&"\t"';
    const bytes = patched(bookOf(""), [
      {
        do: "set-cell",
        sheet: "Data",
        row: 0,
        column: 0,
        content: { kind: "formula", formula, result: "" },
      },
    ]);
    expect(sheetIn(opened(bytes)).cells[0]?.formula).toBe(formula);
    expect(partsOf(bytes)["xl/worksheets/sheet1.xml"]).toContain("&lt;&amp;&gt;]]&gt;");
  });
});
