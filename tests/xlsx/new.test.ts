import { describe, expect, it } from "vitest";
import type { Book } from "../../src/sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { cellIn, codeOf, formulaIn, opened, patched, setSpill, sheetIn, valueIn } from "./answers";
import { partsOf } from "./files";

const book: Book = {
  name: "Saltmarsh Ferries",
  sheets: [
    {
      name: "Lots & <drums>",
      rows: [
        [{ value: "Saltmarsh Ferries", style: "title" }],
        [
          { value: "Lot", style: "heading", note: "As the drum says" },
          { value: "Titre mL", style: "heading" },
          { value: "Twice" },
        ],
        [
          { value: "=not a formula" },
          { value: 2.35, format: "0.00" },
          { formula: "=[@[Titre mL]]*2", value: 4.7 },
        ],
        [null, { value: true }, { formula: "=[@[Titre mL]]*2", value: 2 }],
      ],
      columnWidths: [20, 8],
      tables: [{ name: "Lots", row: 1, column: 0, rows: 3, columns: 3 }],
      frozenRows: 2,
      frozenColumns: 1,
    },
    { name: "Second", rows: [[{ value: 1 }]], columnWidths: [], tables: [], frozenRows: 0 },
  ],
};

const made = (given: Book): Uint8Array => {
  const found = newXlsx(given);
  if (isFileProblem(found)) throw new Error(sayFile(found));
  return found;
};

describe("a book of our own as a file", () => {
  const again = opened(made(book));
  const sheet = "Lots & <drums>";

  it("has its sheets, cells, formulas and notes", () => {
    expect(again.sheets.map(({ name }) => name)).toEqual([sheet, "Second"]);
    expect(valueIn(again, "A3", sheet)).toBe("=not a formula");
    expect(formulaIn(again, "A3", sheet)).toBeUndefined();
    expect(valueIn(again, "B4", sheet)).toBe(true);
    expect(formulaIn(again, "C4", sheet)).toBe("=Lots[[#This Row],[Titre mL]]*2");
    expect(valueIn(again, "C4", sheet)).toBe(2);
    expect(sheetIn(again, sheet).notes).toEqual([{ row: 1, column: 0, text: "As the drum says" }]);
  });

  it("has its tables, widths, frozen panes and looks", () => {
    const { tables, widths, frozenRows, frozenColumns } = sheetIn(again, sheet);
    expect(tables[0]?.columns.map(({ heading, formula }) => [heading, formula])).toEqual([
      ["Lot", undefined],
      ["Titre mL", undefined],
      ["Twice", "=Lots[[#This Row],[Titre mL]]*2"],
    ]);
    expect(widths.map(({ width }) => width)).toEqual([20, 8]);
    expect([frozenRows, frozenColumns]).toEqual([2, 1]);
    expect(again.looks[cellIn(again, "A1", sheet)?.look ?? 0]).toMatchObject({
      bold: true,
      size: 15,
    });
    expect(again.looks[cellIn(again, "B3", sheet)?.look ?? 0]?.format).toBe("0.00");
  });

  it("asks no program to work anything out on opening, and marks what spills", () => {
    const parts = partsOf(
      patched(made(book), [setSpill("A1", "=SEQUENCE(2)", [[1], [2]], "Second")]),
    );
    expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
    expect(parts["xl/worksheets/sheet2.xml"]).toContain(
      '<c r="A1" cm="1"><f t="array" ref="A1:A2">_xlfn.SEQUENCE(2)</f><v>1</v></c>',
    );
  });

  it("is the same file every time", () => {
    expect(made(book)).toEqual(made(book));
  });

  it("is refused with a sentence where it cannot be", () => {
    expect(codeOf(newXlsx({ name: "x", sheets: [] }))).toBe("not-a-workbook");
    const bad = [{ ...book.sheets[1], name: "a/b" }] as Book["sheets"];
    expect(codeOf(newXlsx({ name: "x", sheets: [...book.sheets, ...bad] }))).toBe("bad-name");
  });
});
