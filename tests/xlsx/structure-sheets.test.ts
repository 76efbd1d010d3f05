/** Sheets renamed, moved and deleted in a file made by hand: what must follow is said here, place by place. */
import { describe, expect, it } from "vitest";
import {
  isFileProblem,
  openXlsx,
  restructured,
  sayFile,
  type StructuralAct,
  type Workbook,
} from "../../src/xlsx";
import { main, made, office, partsOf, type Parts, sheetOf, zipped } from "./files";

const packaged = "http://schemas.openxmlformats.org/package/2006";
const spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const relation = (id: string, type: string, target: string, more = "") =>
  `<Relationship Id="${id}" Type="${type}" Target="${target}"${more}/>`;
const relations = (...each: string[]) =>
  `<Relationships xmlns="${packaged}/relationships">${each.join("")}</Relationships>`;
const override = (part: string, type: string) =>
  `<Override PartName="/${part}" ContentType="${type}"/>`;

const table = (id: number, name: string, column: string, formula: string) =>
  `<table xmlns="${main}" id="${id}" name="${name}" displayName="${name}" ref="A1:A3"><tableColumns count="1"><tableColumn id="1" name="${column}">${formula}</tableColumn></tableColumns></table>`;

/** Log, 'Old log', Sums, in this order, and all that can refer to a sheet on the third. */
const parts: Parts = {
  "[Content_Types].xml": `<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${override("xl/workbook.xml", `${spreadsheet}.sheet.main+xml`)}${[1, 2, 3].map((n) => override(`xl/worksheets/sheet${n}.xml`, `${spreadsheet}.worksheet+xml`)).join("")}${[1, 2].map((n) => override(`xl/tables/table${n}.xml`, `${spreadsheet}.table+xml`)).join("")}${override("xl/calcChain.xml", `${spreadsheet}.calcChain+xml`)}${override("xl/drawings/drawing1.xml", "application/vnd.openxmlformats-officedocument.drawing+xml")}${override("docProps/app.xml", "application/vnd.openxmlformats-officedocument.extended-properties+xml")}</Types>`,
  "_rels/.rels": relations(
    relation("rId1", `${office}/officeDocument`, "xl/workbook.xml"),
    relation("rId2", `${office}/extended-properties`, "docProps/app.xml"),
  ),
  "docProps/app.xml": `<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><HeadingPairs><vt:vector size="4" baseType="variant"><vt:variant><vt:lpstr>Worksheets</vt:lpstr></vt:variant><vt:variant><vt:i4>3</vt:i4></vt:variant><vt:variant><vt:lpstr>Named Ranges</vt:lpstr></vt:variant><vt:variant><vt:i4>1</vt:i4></vt:variant></vt:vector></HeadingPairs><TitlesOfParts><vt:vector size="4" baseType="lpstr"><vt:lpstr>Log</vt:lpstr><vt:lpstr>Old log</vt:lpstr><vt:lpstr>Sums</vt:lpstr><vt:lpstr>Log!Print_Area</vt:lpstr></vt:vector></TitlesOfParts></Properties>`,
  "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><bookViews><workbookView activeTab="1" firstSheet="0"/></bookViews><sheets><sheet name="Log" sheetId="4" r:id="rId1"/><sheet name="Old log" sheetId="2" r:id="rId2"/><sheet name="Sums" sheetId="9" r:id="rId3"/></sheets><definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Log!$A$1:$A$3</definedName><definedName name="Both">Log!$A$1,'Old log'!$A$1</definedName><definedName name="Here" localSheetId="2">Sums!$A$1+log!$A$2</definedName></definedNames></workbook>`,
  "xl/_rels/workbook.xml.rels": relations(
    ...[1, 2, 3].map((n) => relation(`rId${n}`, `${office}/worksheet`, `worksheets/sheet${n}.xml`)),
    relation("rId4", `${office}/calcChain`, "calcChain.xml"),
  ),
  "xl/calcChain.xml": `<calcChain xmlns="${main}"><c r="A1" i="9"/></calcChain>`,
  "xl/worksheets/sheet1.xml": sheetOf(
    '<row r="1"><c r="A1" t="inlineStr"><is><t>Titre</t></is></c></row><row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>',
    '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
  ),
  "xl/worksheets/_rels/sheet1.xml.rels": relations(
    relation("rId1", `${office}/table`, "../tables/table1.xml"),
  ),
  "xl/worksheets/sheet2.xml": sheetOf(
    '<row r="1"><c r="A1" t="inlineStr"><is><t>Log!A1</t></is></c></row><row r="2"><c r="A2"><f>A3+Log!A2</f><v>6</v></c></row><row r="3"><c r="A3"><v>4</v></c></row>',
  ),
  "xl/worksheets/sheet3.xml": sheetOf(
    [
      '<row r="1"><c r="A1"><f>SUM(Log!A:A)+\'Old log\'!A3</f><v>9</v></c>',
      '<c r="B1"><f>SUM(Log:Sums!B9)</f><v>0</v></c><c r="C1"><f>SUM(\'Log:Old log\'!A3)</f><v>7</v></c>',
      '<c r="D1"><f>SUM(Titres[Titre])</f><v>5</v></c><c r="E1" t="str"><f>"Log!A1"</f><v>Log!A1</v></c>',
      '<c r="F1"><f>Log!A2*2</f><v>4</v></c><c r="G1"><f>LOG(100)+[1]Log!A1</f><v>2</v></c></row>',
    ].join(""),
    [
      '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>Log!$A$2&gt;1</formula></cfRule></conditionalFormatting>',
      '<dataValidations count="1"><dataValidation type="list" sqref="H1" prompt="see Log!A1"><formula1>Log!$A$2:$A$3</formula1></dataValidation></dataValidations>',
      '<hyperlinks><hyperlink ref="A2" location="Log!A2" display="Log!A2"/></hyperlinks>',
      '<drawing r:id="rId2"/>',
      '<extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}" xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><xm:f>Log!A2:A3</xm:f></ext></extLst>',
    ].join(""),
  ),
  "xl/worksheets/_rels/sheet3.xml.rels": relations(
    relation("rId2", `${office}/drawing`, "../drawings/drawing1.xml"),
  ),
  "xl/drawings/drawing1.xml": `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"><xdr:sp macro="" textlink="Log!$A$2"/></xdr:wsDr>`,
  "xl/drawings/_rels/drawing1.xml.rels": relations(
    relation("rId1", `${office}/hyperlink`, "#Log!A1"),
  ),
  "xl/tables/table1.xml": table(1, "Titres", "Titre", ""),
  "xl/tables/table2.xml": table(
    2,
    "Unled",
    "Titre",
    "<calculatedColumnFormula>Log!A1</calculatedColumnFormula>",
  ),
};

function opened(bytes: Uint8Array): Workbook {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  return workbook;
}

function after(act: StructuralAct, from: Parts = parts): { parts: Parts; workbook: Workbook } {
  const workbook = restructured(opened(zipped(from)), act);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  return { parts: partsOf(workbook.file.bytes), workbook };
}

function whyNot(act: StructuralAct, from: Parts = parts): string {
  const refused = restructured(opened(zipped(from)), act);
  return isFileProblem(refused) ? sayFile(refused) : "it was done";
}

/** The formulas of the row of the third sheet, one after another. */
const formulasOf = ({ sheets }: Workbook, name: string) =>
  sheets.find((sheet) => sheet.name === name)?.cells.flatMap(({ formula }) => formula ?? []);

const unchanged = (now: Parts): string[] =>
  Object.keys(parts).filter((name) => now[name] === parts[name]);

describe("a sheet that is renamed in its file", () => {
  const to = "It's & so";
  const { parts: now, workbook } = after({ do: "rename-sheet", sheet: "Log", name: to });

  it("is found by its new name in every formula, in the quotation marks it needs", () => {
    expect(workbook.sheets.map(({ name }) => name)).toEqual([to, "Old log", "Sums"]);
    expect(formulasOf(workbook, "Sums")).toEqual([
      "=SUM('It''s & so'!A:A)+'Old log'!A3",
      "=SUM('It''s & so:Sums'!B9)",
      "=SUM('It''s & so:Old log'!A3)",
      "=SUM(Titres[Titre])",
      '="Log!A1"',
      "='It''s & so'!A2*2",
      "=LOG(100)+[1]Log!A1",
    ]);
    expect(formulasOf(workbook, "Old log")).toEqual(["=A3+'It''s & so'!A2"]);
    expect(workbook.names.map(({ refersTo, sheet }) => [refersTo, sheet])).toEqual([
      ["='It''s & so'!$A$1:$A$3", to],
      ["='It''s & so'!$A$1,'Old log'!$A$1", undefined],
      ["=Sums!$A$1+'It''s & so'!$A$2", "Sums"],
    ]);
  });

  it("is followed by formats, choices, links, sparklines, drawings and titles", () => {
    const sheet = now["xl/worksheets/sheet3.xml"];
    expect(sheet).toContain("<formula>'It''s &amp; so'!$A$2&gt;1</formula>");
    expect(sheet).toContain("<formula1>'It''s &amp; so'!$A$2:$A$3</formula1>");
    expect(sheet).toContain("location=\"'It''s &amp; so'!A2\" display=\"Log!A2\"");
    expect(sheet).toContain("<xm:f>'It''s &amp; so'!A2:A3</xm:f>");
    expect(sheet).toContain('prompt="see Log!A1"');
    expect(now["xl/drawings/drawing1.xml"]).toContain("textlink=\"'It''s &amp; so'!$A$2\"");
    expect(now["xl/drawings/_rels/drawing1.xml.rels"]).toContain("#'It''s &amp; so'!A1");
    expect(now["docProps/app.xml"]).toContain("<vt:lpstr>It's &amp; so</vt:lpstr>");
  });

  it("leaves every part as it is that says nothing of it", () => {
    expect(unchanged(now)).toEqual(
      expect.arrayContaining([
        "[Content_Types].xml",
        "xl/worksheets/sheet1.xml",
        "xl/tables/table1.xml",
        "xl/calcChain.xml",
      ]),
    );
  });

  it("may change its letters from small to large alone, and stands without marks where it can", () => {
    const { workbook: again } = after({ do: "rename-sheet", sheet: "Log", name: "LOG" });
    expect(formulasOf(again, "Sums")?.[0]).toBe("=SUM(LOG!A:A)+'Old log'!A3");
  });

  it("is not given a name that another has, or that no sheet can have", () => {
    expect(whyNot({ do: "rename-sheet", sheet: "Log", name: "SUMS" })).toContain("is taken");
    for (const name of ["", "a/b", "x".repeat(32), "'quoted'"]) {
      expect(whyNot({ do: "rename-sheet", sheet: "Log", name })).toContain("cannot be that of");
    }
  });

  it("is left as it is where something refers to it that nobody knows, or sheets are locked", () => {
    const drawing = "xl/drawings/drawing1.xml";
    const strange = { ...parts, [drawing]: (parts[drawing] ?? "").replace("textlink", "newlink") };
    expect(whyNot({ do: "rename-sheet", sheet: "Log", name: "New" }, strange)).toContain(
      "in a way that is not known here",
    );
    const book = "xl/workbook.xml";
    const locked = {
      ...parts,
      [book]: (parts[book] ?? "").replace(
        "<bookViews>",
        '<workbookProtection lockStructure="1"/><bookViews>',
      ),
    };
    for (const act of [
      { do: "rename-sheet", sheet: "Log", name: "New" },
      { do: "move-sheet", sheet: "Log", to: 2 },
      { do: "delete-sheet", sheet: "Log" },
    ] as const) {
      expect(whyNot(act, locked)).toContain("protected");
    }
  });
});

describe("a sheet that is moved in its file", () => {
  it("takes its place, and its names and the sheet that is shown go with their sheets", () => {
    const { parts: now, workbook } = after({ do: "move-sheet", sheet: "Sums", to: 1 });
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Log", "Sums", "Old log"]);
    expect(workbook.names.map(({ sheet }) => sheet)).toEqual(["Log", undefined, "Sums"]);
    // Old log was shown: it is the third now
    expect(now["xl/workbook.xml"]).toContain('activeTab="2"');
    expect(now["docProps/app.xml"]).toMatch(/Log<.*Sums<.*Old log</);
    expect(unchanged(now)).toEqual(
      expect.arrayContaining(["xl/worksheets/sheet3.xml", "xl/calcChain.xml"]),
    );
  });

  it("is not moved past the other end of a range of sheets that ends at it", () => {
    expect(whyNot({ do: "move-sheet", sheet: "Log", to: 2 })).toContain("range of sheets");
  });
});

describe("a sheet that is deleted from its file", () => {
  const { parts: now, workbook } = after({ do: "delete-sheet", sheet: "Log" });

  it("takes its parts and its names with it, and no more", () => {
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Old log", "Sums"]);
    for (const part of [
      "xl/worksheets/sheet1.xml",
      "xl/worksheets/_rels/sheet1.xml.rels",
      "xl/tables/table1.xml",
    ]) {
      expect(now[part], part).toBeUndefined();
    }
    expect(now["[Content_Types].xml"]).not.toMatch(/sheet1|table1|calcChain/);
    expect(now["xl/_rels/workbook.xml.rels"]).not.toMatch(/sheet1|calcChain/);
    expect(now["xl/drawings/drawing1.xml"]).toBeDefined();
    expect(workbook.names.map(({ name, sheet }) => [name, sheet])).toEqual([
      ["Both", undefined],
      ["Here", "Sums"],
    ]);
    expect(now["xl/workbook.xml"]).toContain('activeTab="0"');
    expect(now["docProps/app.xml"]).toContain("<vt:i4>2</vt:i4>");
  });

  it("leaves #REF! where it was referred to, by its name or by that of a table on it", () => {
    expect(formulasOf(workbook, "Sums")).toEqual([
      "=SUM(#REF!)+'Old log'!A3",
      "=SUM('Old log:Sums'!B9)",
      "=SUM('Old log'!A3)",
      "=SUM(#REF!)",
      '="Log!A1"',
      "=#REF!*2",
      "=LOG(100)+[1]Log!A1",
    ]);
    expect(formulasOf(workbook, "Old log")).toEqual(["=A3+#REF!"]);
    expect(workbook.names.map(({ refersTo }) => refersTo)).toEqual([
      "=#REF!,'Old log'!$A$1",
      "=Sums!$A$1+#REF!",
    ]);
    expect(now["xl/worksheets/sheet3.xml"]).toContain("<formula1>#REF!</formula1>");
    expect(now["xl/drawings/drawing1.xml"]).toContain('textlink="#REF!"');
  });

  it("is not deleted as the last that is shown, nor with a pivot table on it", () => {
    const { parts: two } = after({ do: "delete-sheet", sheet: "Old log" }, now);
    expect(whyNot({ do: "delete-sheet", sheet: "Sums" }, two)).toContain("last one");
    const pivot = opened(made("pivot"));
    const notes = restructured(pivot, { do: "delete-sheet", sheet: "Notes" });
    expect(isFileProblem(notes)).toBe(false);
  });
});

describe("sheets of files that other programs made", () => {
  it.each(["charts", "dynamic", "office", "pivot", "prefixed", "threaded", "tidy"])(
    "are renamed there and back in %s, and every cell and name is what it was",
    (name) => {
      const before = opened(made(name));
      for (const { name: sheet } of before.sheets) {
        const there = restructured(before, {
          do: "rename-sheet",
          sheet,
          name: "Weir & 'lock'" + "s",
        });
        if (isFileProblem(there)) throw new Error(sayFile(there));
        const back = restructured(there, {
          do: "rename-sheet",
          sheet: "Weir & 'lock's",
          name: sheet,
        });
        if (isFileProblem(back)) throw new Error(sayFile(back));
        expect(back.sheets).toEqual(before.sheets);
        expect(back.names).toEqual(before.names);
      }
    },
  );
});
