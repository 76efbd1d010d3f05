/** What is read of workbooks that other programs made: the figures stand in make.py, in other words. */
import { describe, expect, it } from "vitest";
import { keptWords, openXlsx } from "../../src/xlsx";
import { cellIn, codeOf, formulaIn, opened, sheetIn, valueIn } from "./answers";
import { bookOf, made, main, office, partsWith, sheetOf, zipped } from "./files";

const withStrings = (rows: string, strings: string): Uint8Array => {
  const parts = partsWith(sheetOf(rows), {
    "xl/sharedStrings.xml": `<sst xmlns="${main}">${strings}</sst>`,
  });
  const name = "xl/_rels/workbook.xml.rels";
  const added = `<Relationship Id="rId2" Type="${office}/sharedStrings" Target="sharedStrings.xml"/></Rel`;
  return zipped({ ...parts, [name]: (parts[name] ?? "").replace("</Rel", added) });
};

describe("a workbook with charts, made by XlsxWriter", () => {
  const book = opened(made("charts"));

  it("has its sheets, cells, formulas and looks", () => {
    expect(book.sheets.map(({ name, state }) => [name, state])).toEqual([
      ["Log book", "visible"],
      ["Totals", "visible"],
    ]);
    expect(valueIn(book, "A1")).toBe("Saltmarsh Ferries");
    expect(valueIn(book, "C5")).toBe(2.35);
    expect(formulaIn(book, "E5")).toBe("=56.1*0.1*C5/D5");
    expect(valueIn(book, "E5")).toBeCloseTo((56.1 * 0.1 * 2.35) / 10.02, 14);
    expect(book.looks[cellIn(book, "A4")?.look ?? 0]).toMatchObject({
      bold: true,
      fill: "#dfeaea",
      borders: { top: { line: "thin" } },
    });
    expect(book.looks[cellIn(book, "C5")?.look ?? 0]?.format).toBe("0.00");
    expect(book.looks[cellIn(book, "A5")?.look ?? 0]?.format).toBe("yyyy-mm-dd");
  });

  it("has its widths, merged cells, frozen panes, protection and notes", () => {
    const log = sheetIn(book, "Log book");
    expect(log.widths).toMatchObject([{ first: 1, last: 1, width: 18.7109375 }]);
    expect(log.merged).toEqual([{ row: 1, column: 0, rows: 1, columns: 5 }]);
    expect([log.frozenRows, log.frozenColumns]).toEqual([4, 2]);
    expect(log.notes).toEqual([{ row: 4, column: 2, text: "Second burette" }]);
    expect(book.sheets.map(({ isProtected }) => isProtected)).toEqual([false, true]);
  });

  it("has its table with totals and column formula, and its names", () => {
    expect(sheetIn(book, "Totals").tables).toMatchObject([
      {
        name: "Drums",
        area: { row: 1, column: 1, rows: 6, columns: 3 },
        hasTotals: true,
        columns: [
          { heading: "Lot" },
          { heading: "Litres" },
          { heading: "Kg", formula: "=Drums[[#This Row],[Litres]]*0.915" },
        ],
      },
    ]);
    expect(book.names).toMatchObject([
      { isHidden: true, sheet: "Log book" },
      { name: "Density", refersTo: "=0.915" },
      { name: "Local", refersTo: "=Totals!$C$3:$C$6", sheet: "Totals" },
    ]);
  });

  it("marks where an array formula answers", () => {
    expect(cellIn(book, "H5")?.array).toEqual({
      row: 4,
      column: 7,
      rows: 5,
      columns: 1,
      isDynamic: false,
    });
    expect(cellIn(book, "H9")?.spilledFrom).toEqual({ row: 4, column: 7 });
  });

  it("lists what a grid does not show", () => {
    expect(Object.fromEntries(book.kept.map(({ what, count }) => [what, count]))).toEqual({
      charts: 2,
      images: 1,
      "conditional formats": 3,
      validations: 2,
      hyperlinks: 1,
      sparklines: 1,
      notes: 1,
      "rich text": 1,
    });
  });
});

describe("what is kept", () => {
  it.each([
    [{ what: "charts", count: 2, sheet: "Log book" }, "2 charts on Log book"],
    [{ what: "images", count: 1, sheet: "Log book" }, "1 image on Log book"],
    [{ what: "rich text", count: 3, sheet: "Log book" }, "rich text on Log book"],
    [{ what: "links to other workbooks", count: 1 }, "1 link to another workbook"],
    [{ what: "macros", count: 1 }, "macros"],
  ] as const)("is said in words: %o", (kept, words) => {
    expect(keptWords(kept)).toBe(words);
  });
});

describe("other workbooks", () => {
  it("with dynamic arrays and LAMBDA names show formulas as a cell does", () => {
    const book = opened(made("dynamic"));
    expect(book.dates).toBe(1904);
    expect(cellIn(book, "H2")).toMatchObject({
      formula: "=SORT(C2:C6)",
      array: { rows: 5, columns: 1, isDynamic: true },
    });
    expect(formulaIn(book, "L2")).toBe("=LET(t,AVERAGE(C2:C6),t*2)");
    expect(formulaIn(book, "L3")).toBe("=TITRE.CORRECTED(C2:C6)");
    expect(formulaIn(book, "L4")).toBe("=STDEV.S(C2:C6)");
    expect(book.names).toMatchObject([{ name: "Doubled", refersTo: "=LAMBDA(x,x*2)" }]);
    expect(book.sheets.map(({ kind, state }) => [kind, state])).toEqual([
      ["cells", "visible"],
      ["other", "visible"],
      ["cells", "hidden"],
    ]);
  });

  it("of openpyxl: odd sheet names, theme fonts, texts with spaces and lines", () => {
    const book = opened(made("tidy"));
    expect(book.sheets.map(({ name, state }) => [name, state])).toEqual([
      ["Bob's log, 2026", "visible"],
      ["Notes", "very hidden"],
    ]);
    expect(valueIn(book, "A1", "Notes")).toBe("  spaces kept  ");
    expect(valueIn(book, "A2", "Notes")).toBe("two\nlines");
    expect(valueIn(book, "C5", "Notes")).toBe(true);
    expect(cellIn(book, "D2")).toMatchObject({ formula: "=56.1*0.1*B2/C2", value: undefined });
    expect(book.looks[cellIn(book, "A9")?.look ?? 0]).toMatchObject({ italic: true });
  });

  it("of LibreOffice", () => {
    const book = opened(made("office"));
    expect(formulaIn(book, "C6")).toBe("=B6*2");
    expect(cellIn(book, "C10")?.array).toMatchObject({ rows: 1, columns: 1 });
    expect(book.names).toMatchObject([{ name: "Titres", refersTo: "='Sheet of lots'!$B$2:$B$6" }]);
  });

  it("with threaded comments, a web extension, a pivot table and slicers list them", () => {
    const kinds = (name: string) => opened(made(name)).kept.map(({ what }) => what);
    expect(kinds("threaded")).toEqual(
      expect.arrayContaining(["threaded comments", "web extensions", "custom XML"]),
    );
    expect(kinds("pivot")).toEqual(expect.arrayContaining(["pivot tables", "slicers", "charts"]));
  });

  it("with prefixed names, no addresses and shared formulas read as any other", () => {
    const book = opened(made("prefixed"));
    expect([valueIn(book, "A1"), valueIn(book, "B1"), valueIn(book, "C1")]).toEqual([
      "Lot",
      "Titre ",
      true,
    ]);
    expect(formulaIn(book, "C7")).toBe("=B7*$B$3+1");
    expect(valueIn(book, "A7")).toBe("Lock cottage");
  });
});

describe("cells of every kind", () => {
  it("are read as what they are", () => {
    const book = opened(
      bookOf(
        '<row r="1"><c r="A1"><v>1.5E-3</v></c><c r="B1" t="str"><v>_x0041_&amp;</v></c><c r="C1" t="b"><v>0</v></c>' +
          '<c r="D1" t="e"><v>#DIV/0!</v></c><c r="E1" t="d"><v>2026-05-04T12:00:00</v></c><c r="F1"/>' +
          '<c r="G1" t="n"><v>NaN</v></c><c r="H1" t="inlineStr"><is><r><t>a</t></r><r><t>b</t></r></is></c><c r="I1"><v><![CDATA[7]]></v></c></row>',
      ),
    );
    const values = "ABCDEFGHI".split("").map((letter) => valueIn(book, `${letter}1`));
    expect(values).toEqual([
      0.0015,
      "A&",
      false,
      { error: "#DIV/0!" },
      46146.5,
      undefined,
      { error: "#NUM!" },
      "ab",
      7,
    ]);
  });

  it("share texts, of which phonetic guides are no part", () => {
    const strings = "<si><t>a</t></si><si><r><t>b</t></r><rPh sb='0' eb='1'><t>no</t></rPh></si>";
    const cell = (address: string, index: number) => `<c r="${address}" t="s"><v>${index}</v></c>`;
    const book = opened(withStrings(`<row r="1">${cell("A1", 0)}${cell("B1", 1)}</row>`, strings));
    expect([valueIn(book, "A1"), valueIn(book, "B1")]).toEqual(["a", "b"]);
    expect(codeOf(openXlsx(withStrings(`<row r="1">${cell("A1", 9)}</row>`, strings)))).toBe(
      "damaged",
    );
  });

  it("share formulas, moved, over the edges of a sheet too", () => {
    const formula =
      "A2+$B$1+Sheet9!C1:D$4+SUM(E:E,$F:F,3:4)+LOG10(G1)+T[[#This Row],[A1]]&quot;A1&quot;&amp;'a!B1'!H1";
    const book = opened(
      bookOf(
        `<row r="1"><c r="A1"><f t="shared" ref="A1:B2" si="3">${formula.replace("]&quot;", "]&amp;&quot;")}</f></c></row>` +
          '<row r="2"><c r="B2"><f t="shared" si="3"/></c></row>',
      ),
    );
    expect(formulaIn(book, "B2")).toBe(
      "=B3+$B$1+Sheet9!D2:E$4+SUM(F:F,$F:G,4:5)+LOG10(H2)+T[[#This Row],[A1]]&\"A1\"&'a!B1'!I2",
    );
    const edge = opened(
      bookOf(
        '<row r="2"><c r="B2"><f t="shared" ref="A2:B3" si="0">A1</f></c><c r="C2"><f>1</f></c></row>' +
          '<row r="3"><c r="A3"><f t="shared" si="0"/></c></row>',
      ),
    );
    expect(formulaIn(edge, "A3")).toBe("=XFD2");
  });

  it("of other programs' functions keep their names", () => {
    const book = opened(
      bookOf('<row r="1"><c r="A1"><f>_xldudf_CX_GET(1)+[2]!_xldudf_titre_dose(A2)</f></c></row>'),
    );
    expect(formulaIn(book, "A1")).toBe("=_xldudf_CX_GET(1)+TITRE.DOSE(A2)");
  });
});
