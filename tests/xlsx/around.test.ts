import { describe, expect, it } from "vitest";
import { type Edit, patchXlsx } from "../../src/xlsx";
import {
  cellIn,
  clear,
  codeOf,
  opened,
  patched,
  set,
  setFormula,
  sheetIn,
  valueIn,
} from "./answers";
import { bookOf, made, main, office, partsOf, partsWith, sheetOf, zipped } from "./files";

const sheetXml = (bytes: Uint8Array) => partsOf(bytes)["xl/worksheets/sheet1.xml"] ?? "";

describe("a sheet that is added", () => {
  it("stands last and takes cells in the same breath", () => {
    const edits: Edit[] = [
      { do: "add-sheet", name: "Lots & <more>" },
      set("B3", 7, "lots & <MORE>"),
    ];
    const after = opened(patched(made("charts"), edits));
    expect(after.sheets.map(({ name }) => name)).toEqual(["Log book", "Totals", "Lots & <more>"]);
    expect(valueIn(after, "B3", "Lots & <more>")).toBe(7);
  });

  it.each(["", "a/b", "x".repeat(32), "'quoted'", "History", "log BOOK"])(
    "is refused by the name %j",
    (name) => {
      const code = codeOf(patchXlsx(made("charts"), [{ do: "add-sheet", name }]));
      expect(code).toBe(name === "log BOOK" ? "name-taken" : "bad-name");
    },
  );
});

describe("a defined name", () => {
  it("joins those that are there, as files hold formulas", () => {
    const edits: Edit[] = [
      { do: "define-name", name: "Mean", refersTo: "=TITRE.CORRECTED(A1:A3)" },
    ];
    const book = patched(made("dynamic"), edits);
    expect(partsOf(book)["xl/workbook.xml"]).toContain(
      '<definedName name="Mean">_xldudf_TITRE_CORRECTED(A1:A3)</definedName></definedNames>',
    );
    expect(opened(book).names.map(({ name, refersTo }) => [name, refersTo])).toEqual([
      ["Doubled", "=LAMBDA(x,x*2)"],
      ["Mean", "=TITRE.CORRECTED(A1:A3)"],
    ]);
  });

  it("stands where the format wants it in a workbook without names", () => {
    const parts = partsWith(sheetOf(""));
    const text = (parts["xl/workbook.xml"] ?? "").replace(
      "</workbook>",
      '<calcPr calcId="1"/></workbook>',
    );
    const book = zipped({ ...parts, "xl/workbook.xml": text });
    const edits: Edit[] = [{ do: "define-name", name: "k", refersTo: "=56.1" }];
    expect(partsOf(patched(book, edits))["xl/workbook.xml"]).toContain(
      '</sheets><definedNames><definedName name="k">56.1</definedName></definedNames><calcPr calcId="1"/>',
    );
  });

  it.each([
    ["Density", "name-taken"],
    ["drums", "name-taken"],
    ["A1", "bad-name"],
    ["R1C1", "bad-name"],
    ["1st", "bad-name"],
  ])("is refused by the name %s", (name, code) => {
    expect(codeOf(patchXlsx(made("charts"), [{ do: "define-name", name, refersTo: "=1" }]))).toBe(
      code,
    );
  });
});

describe("the order of calculation", () => {
  const chain = (bytes: Uint8Array) => partsOf(bytes)["xl/calcChain.xml"];
  const log = "Bob's log, 2026";

  it("forgets a formula that goes, and the next entry says which sheet it is of", () => {
    expect(chain(patched(made("threaded"), [set("D2", 1, log), set("D4", 1, log)]))).toMatch(
      /main"><c r="D3" i="1"\/><c r="D5"\/><c r="D6"\/><c r="B5" i="2"\/><\/calcChain>$/,
    );
  });

  it("is not touched where a formula becomes another, or a new one comes", () => {
    const edits = [setFormula("D2", "=1", 1, log), setFormula("Z2", "=2", 2, log)];
    expect(chain(patched(made("threaded"), edits))).toBe(chain(made("threaded")));
  });

  it("goes as a whole, and all that leads to it, when the last formula goes", () => {
    const edits = [3, 4, 5, 6, 7].map((row) => clear(`C${row}`));
    const parts = partsOf(patched(made("prefixed"), edits));
    expect(parts["xl/calcChain.xml"]).toBeUndefined();
    expect(parts["[Content_Types].xml"]).not.toContain("calcChain");
    expect(parts["xl/_rels/workbook.xml.rels"]).not.toContain("calcChain");
    expect(parts["xl/_rels/workbook.xml.rels"]).toContain("sharedStrings");
  });
});

describe("widths, panes, notes and choices", () => {
  it("part the columns that one element of the file stands for", () => {
    const book = bookOf("", "", '<cols><col min="2" max="4" width="9" style="1"/></cols>');
    const width = (column: number, characters: number): Edit => ({
      do: "set-width",
      sheet: "Data",
      column,
      characters,
    });
    expect(sheetXml(patched(book, [width(2, 20), width(0, 5), width(6, 7.5)]))).toContain(
      '<cols><col min="1" max="1" width="5" customWidth="1"/><col min="2" max="2" width="9" style="1"/>' +
        '<col min="3" max="3" width="20" style="1" customWidth="1"/><col min="4" max="4" width="9" style="1"/>' +
        '<col min="7" max="7" width="7.5" customWidth="1"/></cols>',
    );
    expect(codeOf(patchXlsx(book, [width(0, 300)]))).toBe("bad-width");
  });

  it("stand in the order the format wants, whatever is there", () => {
    const after = '<mergeCells><mergeCell ref="Z1:Z2"/></mergeCells><pageMargins/><extLst/>';
    const edits: Edit[] = [
      {
        do: "add-table",
        sheet: "Data",
        name: "T",
        area: { row: 0, column: 0, rows: 2, columns: 1 },
      },
      set("A1", "Lot"),
      {
        do: "offer-words",
        sheet: "Data",
        area: { row: 1, column: 0, rows: 1, columns: 1 },
        words: ["a", "b"],
      },
      { do: "add-note", sheet: "Data", row: 0, column: 0, text: "What to type" },
      { do: "freeze", sheet: "Data", rows: 1, columns: 0 },
      { do: "set-width", sheet: "Data", column: 0, characters: 12 },
    ];
    const xml = sheetXml(patched(bookOf("", after), edits));
    const order = [
      ...xml.matchAll(
        /<(sheetViews|cols|sheetData|mergeCells|dataValidations|pageMargins|legacyDrawing|tableParts|extLst)\b/g,
      ),
    ].map(([, name]) => name);
    expect(order).toEqual(
      "sheetViews cols sheetData mergeCells dataValidations pageMargins legacyDrawing tableParts extLst".split(
        " ",
      ),
    );
  });

  it("freeze a sheet once", () => {
    const edit: Edit = { do: "freeze", sheet: "Data", rows: 3, columns: 2 };
    const book = patched(bookOf(""), [edit]);
    expect(sheetIn(opened(book))).toMatchObject({ frozenRows: 3, frozenColumns: 2 });
    expect(sheetXml(book)).toContain(
      '<pane xSplit="2" ySplit="3" topLeftCell="C4" activePane="bottomRight" state="frozen"/>',
    );
    expect(codeOf(patchXlsx(book, [edit]))).toBe("frozen-already");
  });

  it("add notes beside those that are there, each in its box", () => {
    const note = (row: number): Edit => ({
      do: "add-note",
      sheet: "Log book",
      row,
      column: 0,
      text: "a <b>\n",
    });
    const book = patched(made("charts"), [note(5), note(6)]);
    expect(sheetIn(opened(book), "Log book").notes).toEqual([
      { row: 4, column: 2, text: "Second burette" },
      { row: 5, column: 0, text: "a <b>\n" },
      { row: 6, column: 0, text: "a <b>\n" },
    ]);
    const boxes = Object.entries(partsOf(book)).find(([name]) => name.endsWith(".vml"))?.[1] ?? "";
    expect(new Set(boxes.match(/id="_x0000_s\d+"/g)).size).toBe(3);
    const there: Edit = { do: "add-note", sheet: "Log book", row: 4, column: 2, text: "x" };
    expect(codeOf(patchXlsx(made("charts"), [there]))).toBe("note-there");
  });

  it("offer words, of which others may be typed, where no other rule stands", () => {
    const offer = (row: number, words: string[]): Edit => ({
      do: "offer-words",
      sheet: "Log book",
      area: { row, column: 1, rows: 1, columns: 1 },
      words,
    });
    const xml = sheetXml(patched(made("charts"), [offer(20, ["dried", "as <received>"])]));
    expect(xml).toContain('<dataValidations count="3">');
    expect(xml).toContain(
      'showErrorMessage="0" sqref="B21"><formula1>"dried,as &lt;received&gt;"</formula1></dataValidation></dataValidations>',
    );
    expect(codeOf(patchXlsx(made("charts"), [offer(5, ["a"])]))).toBe("choice-there");
    expect(codeOf(patchXlsx(made("charts"), [offer(20, ["a,b"])]))).toBe("choice-too-long");
  });
});

describe("how cells look", () => {
  it("is added to the styles, and nothing there changes its number", () => {
    const before = opened(made("tidy"));
    const book = patched(made("tidy"), [
      {
        ...set("D2", 1, "Bob's log, 2026"),
        format: "0.0000",
        look: { bold: true, fill: "#ffee00", wraps: true },
      },
      {
        ...set("A1", "Lot", "Bob's log, 2026"),
        look: { colour: "#ff0000", size: 9, italic: true },
      },
    ]);
    const after = opened(book);
    expect(after.looks.slice(0, before.looks.length)).toEqual(before.looks);
    expect(after.looks[cellIn(after, "D2", "Bob's log, 2026")?.look ?? 0]).toMatchObject({
      format: "0.0000",
      bold: true,
      fill: "#ffee00",
      wraps: true,
    });
    expect(after.looks[cellIn(after, "A1", "Bob's log, 2026")?.look ?? 0]).toMatchObject({
      bold: true,
      italic: true,
      colour: "#ff0000",
      size: 9,
      fill: "#dfeaea",
      horizontal: "center",
      borders: { bottom: { line: "thin" } },
    });
  });

  it("is not added twice", () => {
    const edit: Edit = { ...set("A1", 1), format: "0.000", look: "input" };
    const once = patched(bookOf(""), [edit, { ...edit, row: 1 }]);
    const twice = patched(once, [{ ...edit, row: 2 }]);
    expect(opened(once).looks).toHaveLength(2);
    expect(partsOf(twice)["xl/styles.xml"]).toBe(partsOf(once)["xl/styles.xml"]);
  });

  it("keeps the prefix of a styles part that has one", () => {
    const edit: Edit = { ...set("B3", 2), format: "0.000", look: { bold: true, fill: "#00ff00" } };
    const after = opened(patched(made("prefixed"), [edit]));
    expect(after.looks[cellIn(after, "B3")?.look ?? 0]).toMatchObject({
      format: "0.000",
      bold: true,
      fill: "#00ff00",
      horizontal: "right",
    });
  });

  it("can change alone, and leaves what the cell holds", () => {
    const rows = `<row r="1"><c r="A1" t="s"><v>0</v></c></row>`;
    const strings = {
      "xl/sharedStrings.xml": `<sst xmlns="${main}"><si><t>x</t></si></sst>`,
    };
    const parts = partsWith(sheetOf(rows), strings);
    const rels = (parts["xl/_rels/workbook.xml.rels"] ?? "").replace(
      "</Rel",
      `<Relationship Id="rId2" Type="${office}/sharedStrings" Target="sharedStrings.xml"/></Rel`,
    );
    const book = zipped({ ...parts, "xl/_rels/workbook.xml.rels": rels });
    const edit: Edit = {
      do: "set-cell",
      sheet: "Data",
      row: 0,
      column: 0,
      content: { kind: "keep" },
      look: "title",
    };
    expect(sheetXml(patched(book, [edit]))).toContain('<c r="A1" t="s" s="1"><v>0</v></c>');
  });
});
