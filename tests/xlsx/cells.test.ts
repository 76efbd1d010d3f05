import { unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { isFileProblem, patchXlsx, sayFile } from "../../src/xlsx";
import {
  cellIn,
  clear,
  codeOf,
  opened,
  patched,
  rowsAfter,
  set,
  setFormula,
  setResult,
  setSpill,
  valueIn,
} from "./answers";
import { bookOf, made, partsOf, partsWith, sheetOf, zipped } from "./files";

const row = (number: number, cells: string, more = "") =>
  `<row r="${number}"${more}>${cells}</row>`;
const figure = (address: string, value: number) => `<c r="${address}"><v>${value}</v></c>`;

describe("a changed cell", () => {
  it("stands between its neighbours, which keep every letter", () => {
    const odd = '<c  s="0" r="A1" ><v> 1 </v></c>';
    const book = bookOf(row(1, `${odd}${figure("C1", 3)}`));
    expect(rowsAfter(book, [set("B1", 2)])).toBe(
      row(1, `${odd}<c r="B1"><v>2</v></c>${figure("C1", 3)}`),
    );
  });

  it("is cut in at the right letter behind marks, comments, line ends and wide characters", () => {
    const before = '<row r="1">\r\n<!-- <c r="A1"> --><?note <c?>';
    const first = '<c r="A1" t="str" ><v>a &gt; 😀\r\n</v></c >\r\n';
    const second = "<c\r\n r = 'C1'\t><f>\"a>b\"</f><v >1</v></c>";
    const parts = partsWith(`\ufeff${sheetOf(`${before}${first}${second}</row>`)}`);
    const content = unzipSync(patched(zipped(parts), [set("B1", 2), set("C1", 3)]));
    expect(
      new TextDecoder("utf-8", { ignoreBOM: true }).decode(content["xl/worksheets/sheet1.xml"]),
    ).toBe(`\ufeff${sheetOf(`${before}${first}${figure("B1", 2)}${figure("C1", 3)}</row>`)}`);
  });

  it("gets a row of its own where the file has none, in order", () => {
    const book = bookOf(row(2, figure("A2", 2)) + row(5, figure("A5", 5)));
    expect(rowsAfter(book, [set("B7", 7), set("A3", 3), set("A1", 1)])).toBe(
      row(1, figure("A1", 1)) +
        row(2, figure("A2", 2)) +
        row(3, figure("A3", 3)) +
        row(5, figure("A5", 5)) +
        row(7, figure("B7", 7)),
    );
  });

  it("goes into rows written as empty tags, and into a sheet without rows", () => {
    expect(rowsAfter(bookOf('<row r="2" ht="20"/>'), [set("A2", 1)])).toBe(
      '<row r="2" ht="20"><c r="A2"><v>1</v></c></row>',
    );
    const empty = bookOf("");
    expect(rowsAfter(empty, [set("C2", true)])).toBe(row(2, '<c r="C2" t="b"><v>1</v></c>'));
  });

  it("is found where rows and cells give no address", () => {
    const book = bookOf("<row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c></row>");
    expect(rowsAfter(book, [set("B1", 9), set("B2", 8)])).toBe(
      `<row><c><v>1</v></c>${figure("B1", 9)}</row><row><c><v>3</v></c>${figure("B2", 8)}</row>`,
    );
  });

  it("keeps its style and takes that of its row or column where it is new", () => {
    const columns = '<cols><col min="2" max="3" width="9" style="4"/></cols>';
    const book = bookOf(
      row(1, '<c r="A1" s="7"><v>1</v></c>') + row(2, "", ' s="5" customFormat="1"'),
      "",
      columns,
    );
    const edits = [set("A1", 2), set("B1", 3), set("B2", 4), set("D1", 5), set("C9", 6)];
    expect(rowsAfter(book, edits)).toBe(
      row(1, '<c r="A1" s="7"><v>2</v></c><c r="B1" s="4"><v>3</v></c><c r="D1"><v>5</v></c>') +
        row(2, '<c r="B2" s="5"><v>4</v></c>', ' s="5" customFormat="1"') +
        row(9, '<c r="C9" s="4"><v>6</v></c>'),
    );
  });

  it("keeps its style and its place when it is emptied", () => {
    const book = bookOf(row(1, '<c r="A1" s="7" t="str"><f>B1</f><v>x</v></c>'));
    expect(rowsAfter(book, [clear("A1"), clear("B1"), clear("A5")])).toBe(
      row(1, '<c r="A1" s="7"/>'),
    );
  });

  it("holds text inline, whatever the text is", () => {
    const book = bookOf("");
    const texts = ["=1+1", " lead", "a\nb", '<&">', "_x000D_", "\u0001", "\r", "😀", "#N/A", "'x"];
    const edits = texts.map((text, index) => set(`A${index + 1}`, text));
    const again = opened(patched(book, edits));
    expect(texts.map((_, index) => valueIn(again, `A${index + 1}`))).toEqual(texts);
  });

  it("replaces shared, rich and inline text without a trace of the old", () => {
    const book = bookOf(row(1, '<c r="A1" t="inlineStr"><is><r><t>old</t></r></is></c>'));
    expect(rowsAfter(book, [set("A1", "new")])).toBe(
      row(1, '<c r="A1" t="inlineStr"><is><t>new</t></is></c>'),
    );
  });

  it("writes figures so that they come back to the last digit", () => {
    const figures = [0.1, 1 / 3, 1e21, 1.5e-300, -0, 5e-324, 1.7976931348623157e308, 2 ** 53];
    const edits = figures.map((value, index) => set(`A${index + 1}`, value));
    const again = opened(patched(bookOf(""), edits));
    expect(figures.map((_, index) => valueIn(again, `A${index + 1}`))).toEqual(
      figures.map((value) => value + 0),
    );
  });

  it("holds errors as errors, newer ones as #VALUE!, which every program knows", () => {
    const edits = [set("A1", { error: "#N/A" }), set("B1", { error: "#SPILL!" })];
    expect(rowsAfter(bookOf(""), edits)).toBe(
      row(1, '<c r="A1" t="e"><v>#N/A</v></c><c r="B1" t="e"><v>#VALUE!</v></c>'),
    );
  });

  it("may be edited more than once: the last content counts, a look alone changes none", () => {
    const keep = { ...set("A1", 0), content: { kind: "keep" } as const };
    const edits = [
      setFormula("A1", "=1+1", 1),
      setResult("A1", 2),
      { ...keep, format: "0.00" },
      { ...keep, look: { bold: true } },
      set("B1", 1),
      set("B1", 2),
    ];
    const again = opened(patched(bookOf(""), edits));
    expect([valueIn(again, "A1"), valueIn(again, "B1")]).toEqual([2, 2]);
    const cell = cellIn(again, "A1");
    expect(cell?.formula).toBe("=1+1");
    expect(again.looks[cell?.look ?? 0]).toMatchObject({ format: "0.00", bold: true });
  });

  it.each([
    ["a figure that is none", set("A1", NaN), "not-a-number"],
    ["an endless figure", set("A1", Infinity), "not-a-number"],
    ["a text no cell can hold", set("A1", "x".repeat(32_768)), "text-too-long"],
    ["a broken formula", setFormula("A1", "=SUM(1", 0), "broken-formula"],
    ["a formula without end", setFormula("A1", `=${"1+".repeat(9000)}1`, 0), "broken-formula"],
    ["a cell beyond the last column", { ...set("A1", 1), column: 16_384 }, "outside-sheet"],
    ["a cell above the first row", { ...set("A1", 1), row: -1 }, "outside-sheet"],
    ["a sheet that is not there", set("A1", 1, "Nowhere"), "no-sheet"],
    ["a result without a formula", setResult("A1", 1), "no-formula"],
  ])("is refused for %s", (_, edit, code) => {
    expect(codeOf(patchXlsx(bookOf(row(1, figure("A1", 1))), [edit]))).toBe(code);
  });

  it("keeps the span and the dimension of the sheet true", () => {
    const book = bookOf(row(2, figure("B2", 1), ' spans="2:2"'), "", '<dimension ref="B2"/>');
    const text = partsOf(patched(book, [set("D2", 1), set("A4", 1)]))["xl/worksheets/sheet1.xml"];
    expect(text).toContain('<dimension ref="A2:D4"/>');
    expect(text).toContain('<row r="2" spans="2:4">');
  });

  it("is refused below merged cells, but not in the first of them", () => {
    const book = bookOf(
      row(1, figure("A1", 1)),
      '<mergeCells><mergeCell ref="A1:B2"/></mergeCells>',
    );
    expect(codeOf(patchXlsx(book, [set("B2", 1)]))).toBe("in-merged-cells");
    expect(valueIn(opened(patched(book, [set("A1", 5), clear("B2")])), "A1")).toBe(5);
  });

  it("finds its place in a sheet whose rows or cells stand out of order", () => {
    const book = bookOf(
      row(3, figure("B3", 6) + figure("A3", 5)) + row(1, figure("A1", 1)) + row(2, figure("A2", 2)),
    );
    const now = opened(patched(book, [set("A1", 9), set("B2", 7)]));
    expect(["A1", "A2", "B2", "A3", "B3"].map((name) => valueIn(now, name))).toEqual([
      9, 2, 7, 5, 6,
    ]);
  });

  it("is refused in a sheet where a row stands twice", () => {
    const book = bookOf(
      row(2, figure("A2", 2)) + row(1, figure("A1", 1)) + row(2, figure("B2", 1)),
    );
    expect(codeOf(patchXlsx(book, [set("A1", 1)]))).toBe("rows-out-of-order");
  });
});

describe("a formula", () => {
  it("is written as files hold it, with its result", () => {
    const edits = [
      setFormula("A1", '=TITRE.DOSE(B1:B3)&"<"', "2.4 g"),
      setFormula("A2", "=T.INV.2T(0.05,3)", 3.18),
      setFormula("A3", "=1=1", true),
      setFormula("A4", "=1/0", { error: "#DIV/0!" }),
      setFormula("A5", '=""', ""),
    ];
    expect(rowsAfter(bookOf(""), edits)).toBe(
      row(1, '<c r="A1" t="str"><f>_xldudf_TITRE_DOSE(B1:B3)&amp;"&lt;"</f><v>2.4 g</v></c>') +
        row(2, '<c r="A2"><f>_xlfn.T.INV.2T(0.05,3)</f><v>3.18</v></c>') +
        row(3, '<c r="A3" t="b"><f>1=1</f><v>1</v></c>') +
        row(4, '<c r="A4" t="e"><f>1/0</f><v>#DIV/0!</v></c>') +
        row(5, '<c r="A5" t="str"><f>""</f><v></v></c>'),
    );
  });

  it("that works on many cells is written as an array formula, or it would show another figure", () => {
    expect(rowsAfter(bookOf(""), [setFormula("A1", "=SUM(B1:B3*C1:C3)", 9)])).toBe(
      row(1, '<c r="A1"><f t="array" ref="A1">SUM(B1:B3*C1:C3)</f><v>9</v></c>'),
    );
    const text = partsOf(patched(made("dynamic"), [setFormula("Z1", "=SUM(-A1:A3)", 9, "Lots")]));
    expect(text["xl/worksheets/sheet1.xml"]).toContain(
      '<c r="Z1" cm="1"><f t="array" ref="Z1">SUM(-A1:A3)</f><v>9</v></c>',
    );
  });

  it("stays letter for letter when only its result is brought up to date", () => {
    const formula = "<f  ca='1'> _xldudf_titre_dose( B1 ) </f>";
    const book = bookOf(row(1, `<c r="A1" s="2" cm="1" vm="3" t="e">${formula}<v>#VALUE!</v></c>`));
    expect(rowsAfter(book, [setResult("A1", 2.5)])).toBe(
      row(1, `<c r="A1" s="2" cm="1">${formula}<v>2.5</v></c>`),
    );
  });
});

describe("a shared formula", () => {
  const shared = bookOf(
    row(1, '<c r="A1"><f t="shared" ref="A1:A4" si="0">B1*$C$1+SUM(D:D)</f><v>1</v></c>') +
      row(2, '<c r="A2"><f t="shared" si="0"/><v>2</v></c>') +
      row(3, '<c r="A3" t="str"><f t="shared" si="0"></f><v>x</v></c>') +
      row(4, '<c r="A4"><f t="shared" si="0"/></c>'),
  );

  it("lives on in the other cells when one of them changes", () => {
    const rows = rowsAfter(shared, [set("A2", 9)]);
    expect(rows).toContain('<f t="shared" ref="A1:A4" si="0">');
    expect(rows).toContain('<c r="A3" t="str"><f t="shared" si="0"></f><v>x</v></c>');
  });

  it("is written out in the other cells when the first, which holds its text, changes", () => {
    expect(rowsAfter(shared, [set("A1", 9), setFormula("A4", "=1", 1)])).toBe(
      row(1, figure("A1", 9)) +
        row(2, '<c r="A2"><f>B2*$C$1+SUM(D:D)</f><v>2</v></c>') +
        row(3, '<c r="A3" t="str"><f>B3*$C$1+SUM(D:D)</f><v>x</v></c>') +
        row(4, '<c r="A4"><f>1</f><v>1</v></c>'),
    );
  });
});

describe("an array formula", () => {
  const array = bookOf(
    row(1, '<c r="A1"><f t="array" ref="A1:A3">B1:B3*2</f><v>1</v></c><c r="B1" t="s"/>') +
      row(2, '<c r="A2" s="1"><v>2</v></c>') +
      row(3, '<c r="A3"><v>3</v></c>'),
  );

  it("is not changed in part", () => {
    expect(codeOf(patchXlsx(array, [set("A2", 1)]))).toBe("in-array");
    const found = patchXlsx(array, [clear("A3")]);
    expect(isFileProblem(found) && sayFile(found)).toBe(
      "Data!A3 is part of the array formula in A1:A3: change its first cell.",
    );
  });

  it("takes its answers along when its first cell changes", () => {
    expect(rowsAfter(array, [set("A1", 5), set("A3", 7)])).toBe(
      row(1, `${figure("A1", 5)}<c r="B1" t="s"/>`) +
        row(2, '<c r="A2" s="1"/>') +
        row(3, figure("A3", 7)),
    );
  });

  it("gets new results, its own and those of the cells it answers in", () => {
    const rows = rowsAfter(array, [setResult("A1", 5), setResult("A2", "x")]);
    expect(rows).toContain('<f t="array" ref="A1:A3">B1:B3*2</f><v>5</v>');
    expect(rows).toContain('<c r="A2" s="1" t="str"><v>x</v></c>');
  });

  it("is written over the area it answers over, larger or smaller than before", () => {
    const rows = rowsAfter(array, [
      setSpill("A1", "=SORT(B1:B2)", [
        [4, 5],
        [6, true],
      ]),
    ]);
    expect(rows).toBe(
      row(
        1,
        '<c r="A1"><f t="array" ref="A1:B2">_xlfn._xlws.SORT(B1:B2)</f><v>4</v></c>' +
          figure("B1", 5),
      ) +
        row(2, '<c r="A2" s="1"><v>6</v></c><c r="B2" t="b"><v>1</v></c>') +
        row(3, '<c r="A3"/>'),
    );
  });

  it("does not answer over cells that hold anything", () => {
    const book = bookOf(row(2, figure("A2", 1)));
    expect(codeOf(patchXlsx(book, [setSpill("A1", "=SORT(B1:B2)", [[4], [5]])]))).toBe("not-empty");
    const cleared = [setSpill("A1", "=SORT(B1:B2)", [[4], [5]]), set("A2", 1)];
    expect(codeOf(patchXlsx(bookOf(""), cleared))).toBe("in-array");
    expect(codeOf(patchXlsx(bookOf(""), [...cleared].reverse()))).toBe("not-empty");
  });
});
