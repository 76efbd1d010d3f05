import { describe, expect, it } from "vitest";
import { bookOf, main, office, partsOf, partsWith, sheetOf, zipped } from "../../xlsx/files";
import { formulasIn, rowsIn, shared, sharedParts } from "./shared";

const inputs =
  '<c r="A2"><v>2.4</v></c><c r="B2"><v>3.5</v></c><c r="C2"><v>0.15</v></c><c r="D2"/>';
const row = (cells: string, number = 2): string => `<row r="${number}">${cells}</row>`;

describe("formulas that are written once and stand in many cells", () => {
  const rows = [
    row('<c r="G2"><f t="shared" ref="G2:G4" si="3">TITRE.CORRECTED(A2:B2,$C$2)</f><v>1</v></c>'),
    row('<c r="G3"><f t="shared" si="3"/><v>2</v></c>', 3),
    row('<c r="G4"><f t="shared" si="3"/><v>3</v></c>', 4),
  ].join("");

  it("are written out for each cell, moved as they were", () => {
    const parts = sharedParts(bookOf(rows));
    expect(formulasIn(parts)).toEqual({
      G2: "AVERAGE(A2:B2)-AVERAGE($C$2)",
      G3: "AVERAGE(A3:B3)-AVERAGE($C$2)",
      G4: "AVERAGE(A4:B4)-AVERAGE($C$2)",
    });
    expect(rowsIn(parts)).not.toContain("shared");
  });

  it("of others stay shared", () => {
    const others = rows.replaceAll('si="3"', 'si="1"').replace(/TITRE[^<]*/, "SUM(A2:B2)");
    const mixed = others + row('<c r="G9"><f>TITRE.CORRECTED(A9,C9)</f><v>1</v></c>', 9);
    expect(rowsIn(sharedParts(bookOf(mixed)))).toContain(others);
  });
});

describe("array formulas", () => {
  it("in one cell become plain formulas", () => {
    const rows = row('<c r="G2"><f t="array" ref="G2">TITRE.CORRECTED(A2:B2,C2)</f><v>1</v></c>');
    expect(rowsIn(sharedParts(bookOf(rows)))).toBe(
      row('<c r="G2"><f>AVERAGE(A2:B2)-AVERAGE(C2)</f><v>1</v></c>'),
    );
  });

  it("over several cells stay array formulas over them", () => {
    const cells = (formula: string) =>
      row(`<c r="G2"><f t="array" ref="G2:H2">${formula}</f><v>1</v></c><c r="H2"><v>1</v></c>`);
    expect(rowsIn(sharedParts(bookOf(cells("TITRE.CORRECTED(A2:B2,C2)+A2"))))).toBe(
      cells("(AVERAGE(A2:B2)-AVERAGE(C2))+A2"),
    );
  });

  it("that spill become one plain formula for each cell, with its value", () => {
    const spilled =
      '<c r="G2" t="b" cm="1"><f t="array" ref="G2:H2">_xldudf_TITRE_OUTLIERS(A2:B2)</f><v>0</v></c><c r="H2" s="0" t="b"><v>1</v></c>';
    expect(rowsIn(sharedParts(bookOf(row(inputs + spilled))))).toBe(
      row(
        `${inputs}<c r="G2" t="b"><f>A2&gt;3</f><v>0</v></c><c r="H2" t="b"><f>B2&gt;3</f><v>1</v></c>`,
      ),
    );
  });

  it("that spill words and figures keep the words and let the figures follow", () => {
    const spilled = [
      row(
        '<c r="G2" t="str"><f t="array" ref="G2:H3">TITRE.SPREAD(A2:B2)</f><v>how many</v></c><c r="H2"><v>2</v></c>',
      ),
      row('<c r="G3" t="str"><v>mean, mL</v></c>', 3),
    ].join("");
    expect(rowsIn(sharedParts(bookOf(spilled)))).toBe(
      [
        row(
          '<c r="G2" t="inlineStr"><is><t>how many</t></is></c><c r="H2"><f>COUNT(A2:B2)</f><v>2</v></c>',
        ),
        row(
          '<c r="G3" t="str"><v>mean, mL</v></c><c r="H3" t="str"><f>AVERAGE(A2:B2)</f><v></v></c>',
          3,
        ),
      ].join(""),
    );
  });

  it("of which the file holds less than their table say so", () => {
    const rows = row('<c r="G2" t="b"><f t="array" ref="G2">TITRE.OUTLIERS(A2:B2)</f><v>0</v></c>');
    const { report } = shared(bookOf(rows));
    expect(report.left).toEqual([
      {
        cell: "Data!G2",
        reason: expect.stringContaining("1 row and 2 columns") as string,
        isInPart: true,
      },
    ]);
  });

  it("give a figure to a larger formula through a table of helper cells", () => {
    const rows = row('<c r="G2"><f>COUNTIF(TITRE.OUTLIERS(A2:B2),TRUE)</f><v>1</v></c>');
    const parts = sharedParts(bookOf(rows));
    expect(formulasIn(parts).G2).toBe("COUNTIF(Workings!C6:D6,TRUE)");
    expect(formulasIn(parts, 2)).toMatchObject({ C6: "Data!A2>3", D6: "Data!B2>3" });
  });

  it("of which one cell is asked for by INDEX give that cell", () => {
    const rows = row('<c r="G2"><f>INDEX(TITRE.OUTLIERS(A2:B2),1,2)</f><v>1</v></c>');
    expect(formulasIn(sharedParts(bookOf(rows))).G2).toBe("B2>3");
  });

  it("that another formula takes whole are taken as the cells they have in the file", () => {
    const rows = row(
      '<c r="G2" t="b"><f t="array" ref="G2:H2">TITRE.OUTLIERS(A2:B2)</f><v>0</v></c><c r="H2" t="b"><v>1</v></c><c r="J2"><f>TITRE.CORRECTED(_xlfn.ANCHORARRAY(G2),C2)</f><v>1</v></c>',
    );
    expect(formulasIn(sharedParts(bookOf(rows))).J2).toBe("AVERAGE(Data!$G$2:$H$2)-AVERAGE(C2)");
  });
});

const tableXml = (formula: string): string =>
  `<table xmlns="${main}" id="1" name="Lots" displayName="Lots" ref="A1:D3"><tableColumns count="4"><tableColumn id="1" name="Titre 1 mL"/><tableColumn id="2" name="Titre 2 mL"/><tableColumn id="3" name="Blank"/><tableColumn id="4" name="Answer"><calculatedColumnFormula>${formula}</calculatedColumnFormula></tableColumn></tableColumns></table>`;

function tableBook(formula: string): Uint8Array {
  const heads = ["Titre 1 mL", "Titre 2 mL", "Blank", "Answer"].map(
    (head, at) => `<c r="${"ABCD".charAt(at)}1" t="inlineStr"><is><t>${head}</t></is></c>`,
  );
  const answers = [2, 3].map((n) => row(`<c r="D${n}"><f>${formula}</f><v>1</v></c>`, n));
  const parts = partsWith(
    sheetOf(
      row(heads.join(""), 1) + answers.join(""),
      '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
    ),
    {
      "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${office}/table" Target="../tables/table1.xml"/></Relationships>`,
      "xl/tables/table1.xml": tableXml(formula),
    },
  );
  return zipped(parts);
}

describe("columns of a table", () => {
  const own = (from: string, to = from) => `Lots[[#This Row],[${from}]:[${to}]]`;
  const titres = own("Titre 1 mL", "Titre 2 mL");

  it("without helper cells keep one formula for all rows, and new rows go on filling themselves", () => {
    const parts = sharedParts(tableBook(`TITRE.CORRECTED(${titres},Lots[[#This Row],[Blank]])`));
    const plain = `AVERAGE(${titres})-AVERAGE(Lots[[#This Row],[Blank]])`;
    expect(formulasIn(parts)).toEqual({ D2: plain, D3: plain });
    expect(parts["xl/tables/table1.xml"]).toBe(tableXml(plain));
  });

  it("with helper cells have those of their own row, and a new row is left empty", () => {
    const formula = "TITRE.ACIDVALUE(Lots[[#This Row],[Titre 1 mL]],0.1,Lots[[#This Row],[Blank]])";
    const { report } = shared(tableBook(formula));
    expect(report.unfilled).toEqual(["Lots[Answer]"]);
    const parts = sharedParts(tableBook(formula));
    expect(formulasIn(parts, 2)).toEqual({
      B6: "ROW(Data!$A2)",
      C6: "Data!$A2*0.1",
      D6: "56.1*C6/Data!$C2",
      B7: "ROW(Data!$A3)",
      C7: "Data!$A3*0.1",
      D7: "56.1*C7/Data!$C3",
    });
    const others = "INDEX(Workings!D$6:D$7,MATCH(ROW(),Workings!B$6:B$7,0))";
    expect(formulasIn(parts)).toEqual({
      D2: `IF(Workings!B6=ROW(),Workings!D6,${others})`,
      D3: `IF(Workings!B7=ROW(),Workings!D7,${others})`,
    });
    expect(parts["xl/tables/table1.xml"]).not.toContain("calculatedColumnFormula");
  });

  it("are taken cell by cell, as whole columns and across columns", () => {
    const flags = sharedParts(tableBook("INDEX(TITRE.OUTLIERS(Lots[Titre 1 mL]),2,1)"));
    expect(formulasIn(flags).D2).toBe("Data!$A$3>3");
    const across = sharedParts(tableBook(`INDEX(TITRE.OUTLIERS(${titres}),1,2)`));
    expect(formulasIn(across).D3).toBe("Lots[[#This Row],[Titre 2 mL]]>3");
  });
});

function namedBook(names: string, cells = "", after = ""): Uint8Array {
  const parts = partsWith(sheetOf(row(inputs + cells), after));
  const workbook = parts["xl/workbook.xml"] ?? "";
  return zipped({
    ...parts,
    "xl/workbook.xml": workbook.replace(
      "</sheets>",
      `</sheets><definedNames>${names}</definedNames>`,
    ),
  });
}

describe("names", () => {
  const name = (called: string, formula: string) =>
    `<definedName name="${called}">${formula}</definedName>`;

  it("for cells and for figures are taken as what they stand for", () => {
    const names = name("titres", "Data!$A$2:$B$2") + name("solvent", "0.15");
    const book = namedBook(
      names,
      '<c r="G2"><f>INDEX(TITRE.OUTLIERS(titres),1,2)</f><v>1</v></c><c r="H2"><f>TITRE.CORRECTED(titres,solvent)</f><v>1</v></c>',
    );
    expect(formulasIn(sharedParts(book))).toEqual({
      G2: "Data!$B$2>3",
      H2: "AVERAGE(titres)-AVERAGE(solvent)",
    });
  });

  it("whose formula calls ours get the plain one, and helper cells that stay in their place", () => {
    const book = namedBook(
      name("today", "TITRE.CORRECTED(Data!$A$2:$B$2,Data!$C$2)") +
        name("acid", "TITRE.ACIDVALUE(Data!$A$2,0.1,10)"),
    );
    const { bytes, report } = shared(book);
    const parts = partsOf(bytes);
    expect(report).toMatchObject({ formulas: 2, left: [] });
    expect(parts["xl/workbook.xml"]).toContain(
      name("today", "AVERAGE(Data!$A$2:$B$2)-AVERAGE(Data!$C$2)") + name("acid", "Workings!$D$6"),
    );
    expect(formulasIn(parts, 2)).toEqual({ C6: "Data!$A$2*0.1", D6: "56.1*$C$6/10" });
  });

  it("that move with the cell that uses them are left when they need helper cells", () => {
    const { report } = shared(namedBook(name("acid", "TITRE.ACIDVALUE(Data!A2,0.1,10)")));
    expect(report.left).toEqual([
      { cell: "the name acid", reason: "it moves with the cell that uses it", isInPart: false },
    ]);
    const moving = shared(namedBook(name("mean", "TITRE.CORRECTED(Data!A2,0.1)")));
    expect(moving.report).toMatchObject({ formulas: 1, left: [] });
  });
});

describe("conditional formats and rules for what may be typed", () => {
  const format = (formula: string, area: string): string =>
    `<conditionalFormatting sqref="${area}"><cfRule type="expression" dxfId="0" priority="1"><formula>${formula}</formula></cfRule></conditionalFormatting>`;
  const rule = (formula: string): string =>
    `<dataValidations count="1"><dataValidation type="custom" sqref="A2:A9"><formula1>${formula}</formula1></dataValidation></dataValidations>`;
  const newer = (formula: string): string =>
    `<extLst><ext xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}"><x14:dataValidations xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" count="1"><x14:dataValidation type="custom"><x14:formula1><xm:f>${formula}</xm:f></x14:formula1><xm:sqref>B2:B9</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>`;

  const call = "TITRE.CORRECTED(A2:B2,C2)&gt;3";
  const plain = "(AVERAGE(A2:B2)-AVERAGE(C2))&gt;3";

  it.each([
    ["conditional format", (formula: string) => format(formula, "A2:A9")],
    ["rule", rule],
    ["newer rule", newer],
  ])("are written in plain functions: %s", (_, written) => {
    const parts = sharedParts(bookOf(row(inputs), written(call)));
    expect(parts["xl/worksheets/sheet1.xml"]).toBe(sheetOf(row(inputs), written(plain)));
  });

  it("of one cell may go through helper cells, those of many may not", () => {
    const helped = "TITRE.ACIDVALUE(A2,0.1,10)&gt;3";
    const one = sharedParts(bookOf(row(inputs), format(helped, "A2")));
    expect(one["xl/worksheets/sheet1.xml"]).toContain("Workings!D6&gt;3");
    expect(formulasIn(one, 2)).toEqual({ C6: "Data!A2*0.1", D6: "56.1*C6/10" });
    const { report } = shared(bookOf(row(inputs), format(helped, "A2:A9")));
    expect(report.left[0]).toMatchObject({
      cell: "the conditional format of A2:A9 on Data",
      reason: "it moves with the cell that uses it",
    });
  });
});
