import { describe, expect, it } from "vitest";
import { bookOf } from "../../xlsx/files";
import { formulasIn, rowsIn, shared, sharedParts, wordsIn } from "./shared";

const cell = (name: string, formula: string, value = "2.3"): string =>
  `<c r="${name}"><f>${formula}</f><v>${value}</v></c>`;

const row = (...cells: string[]): string => `<row r="2">${cells.join("")}</row>`;

const inputs = '<c r="A2"><v>2.4</v></c><c r="B2"><v>2.5</v></c><c r="C2"><v>0.15</v></c>';

const ours = (formula: string): string =>
  formulasIn(sharedParts(bookOf(row(inputs, cell("G2", formula))))).G2 ?? "none";

describe("a call of ours in a cell", () => {
  it.each([
    "_xldudf_TITRE_CORRECTED(A2:B2,C2)",
    "_xldudf_titre_corrected(A2:B2,C2)",
    "TITRE.CORRECTED(A2:B2,C2)",
    "titre.Corrected( A2:B2, C2 )",
    "[2]!_xldudf_TITRE_CORRECTED(A2:B2,C2)",
    "_xlfn.SINGLE(_xldudf_TITRE_CORRECTED(A2:B2,C2))",
  ])("is written in plain functions: %s", (formula) => {
    expect(ours(formula)).toMatch(/^\(?AVERAGE\(A2:B2\)-AVERAGE\(C2\)\)?$/);
  });

  it("keeps its value, and every other cell its text", () => {
    const before = row(
      inputs,
      cell("F2", "SUM(A2:B2)", "4.9"),
      cell("G2", "TITRE.CORRECTED(A2:B2,C2)", "2.30"),
    );
    const rows = rowsIn(sharedParts(bookOf(before)));
    expect(rows).toBe(before.replace("TITRE.CORRECTED(A2:B2,C2)", "AVERAGE(A2:B2)-AVERAGE(C2)"));
  });

  it.each([
    ["ROUND(TITRE.CORRECTED(A2:B2,C2),2)", "ROUND((AVERAGE(A2:B2)-AVERAGE(C2)),2)"],
    ["2*TITRE.CORRECTED(A2:B2,C2)+A2", "2*(AVERAGE(A2:B2)-AVERAGE(C2))+A2"],
    [
      'TITRE.CORRECTED(A2:B2,C2)&amp;" not TITRE.CORRECTED(A2)"',
      '(AVERAGE(A2:B2)-AVERAGE(C2))&" not TITRE.CORRECTED(A2)"',
    ],
    ["TITRE.CORRECTED($A$2:B$2,C2)", "AVERAGE($A$2:B$2)-AVERAGE(C2)"],
    ["TITRE.CORRECTED(A2:B2,-0.15)", "AVERAGE(A2:B2)-AVERAGE((-0.15))"],
    ["TITRE.CORRECTED({2.4,2.5;2.6,2.7},C2)", "AVERAGE({2.4,2.5;2.6,2.7})-AVERAGE(C2)"],
    ["TITRE.CORRECTED('Bob''s log, A1'!A2:B2,C2)", "AVERAGE('Bob''s log, A1'!A2:B2)-AVERAGE(C2)"],
    ["TITRE.CORRECTED(A:A,C2)", "AVERAGE(A:A)-AVERAGE(C2)"],
  ])("stands in something larger, or takes what it is given: %s", (formula, plain) => {
    expect(ours(formula)).toBe(plain);
  });

  it("that is only looked like by a text stays as it is", () => {
    const rows = row(inputs, cell("G2", '"TITRE.CORRECTED(A2)"&amp;B2'));
    const { bytes, report } = shared(bookOf(rows));
    expect(report.formulas).toBe(0);
    expect(bytes).toEqual(bookOf(rows));
  });
});

describe("helper cells", () => {
  it("stand in a row for their formula on a sheet that is added, under what they are", () => {
    const parts = sharedParts(bookOf(row(inputs, cell("G2", "TITRE.ACIDVALUE(A2,B2,C2)"))));
    expect(formulasIn(parts).G2).toBe("Workings!D6");
    expect(formulasIn(parts, 2)).toEqual({
      B6: "ROW(Data!A2)",
      C6: "Data!A2*Data!B2",
      D6: "56.1*C6/Data!C2",
    });
    expect(wordsIn(parts, 2).slice(-6)).toEqual([
      "Data: TITRE.ACIDVALUE",
      "For",
      "Row",
      "acid, mmol",
      "TITRE.ACIDVALUE, mg KOH/g",
      "Data, column G",
    ]);
  });

  it("hold what an argument is worked out by, with the sheet it is worked out from", () => {
    const parts = sharedParts(
      bookOf(row(inputs, cell("G2", "TITRE.ACIDVALUE(A2-$C$2,B2/1000,10)"))),
    );
    expect(formulasIn(parts, 2)).toEqual({
      B6: "ROW(Data!A2)",
      C6: "Data!A2-Data!$C$2",
      D6: "Data!B2/1000",
      E6: "C6*D6",
      F6: "56.1*E6/10",
    });
    expect(formulasIn(parts).G2).toBe("Workings!F6");
  });

  it("hold the answer of a call inside a call", () => {
    const formula = "TITRE.ACIDVALUE(TITRE.CORRECTED(A2:B2,C2),0.1,10)";
    const parts = sharedParts(bookOf(row(inputs, cell("G2", formula))));
    expect(formulasIn(parts, 2)).toEqual({
      B6: "ROW(Data!A2)",
      C6: "AVERAGE(Data!A2:B2)-AVERAGE(Data!C2)",
      D6: "C6*0.1",
      E6: "56.1*D6/10",
    });
    expect(formulasIn(parts).G2).toBe("Workings!E6");
  });

  it("are marked to be worked out, and the file to be worked out on opening", () => {
    const parts = sharedParts(bookOf(row(inputs, cell("G2", "TITRE.ACIDVALUE(A2,B2,C2)"))));
    expect(rowsIn(parts, 2)).toContain('<f ca="1">Data!A2*Data!B2</f></c>');
    expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029" fullCalcOnLoad="1"/>');
  });

  it("of a column are looked up by the row, should sorting part them from their formulas", () => {
    const lines = [2, 3, 4].map(
      (n) => `<row r="${n}">${cell(`G${n}`, `TITRE.ACIDVALUE(A${n},B${n},C${n})`)}</row>`,
    );
    const parts = sharedParts(bookOf(lines.join("")));
    const found = formulasIn(parts);
    const others = "INDEX(Workings!D$6:D$8,MATCH(ROW(),Workings!B$6:B$8,0))";
    expect([found.G2, found.G3, found.G4]).toEqual(
      [6, 7, 8].map((line) => `IF(Workings!B${line}=ROW(),Workings!D${line},${others})`),
    );
    expect(formulasIn(parts, 2)).toMatchObject({ B6: "ROW(Data!A2)", B8: "ROW(Data!A4)" });
  });

  it("are looked up among formulas of the very same kind alone", () => {
    const lines = [0.1, 0.2, 0.1].map(
      (strength, at) =>
        `<row r="${at + 2}">${cell(`G${at + 2}`, `TITRE.ACIDVALUE(A${at + 2},${strength},C${at + 2})`)}</row>`,
    );
    const found = formulasIn(sharedParts(bookOf(lines.join(""))));
    expect(found.G2).toContain("MATCH(ROW(),Workings!B$6:B$7,0)");
    expect(found.G4).toMatch(/^IF\(Workings!B7=ROW\(\),Workings!D7,/);
    expect(found.G3).toBe("Workings!D8");
  });

  it("of two columns are never as far away, so that none is taken for another's", () => {
    const call = (column: string, n: number) =>
      `<row r="${n}">${cell(`${column}${n}`, `TITRE.ACIDVALUE(A${n},B${n},C${n})`)}</row>`;
    const rows = [call("G", 2), call("G", 3), call("H", 4), call("H", 5)];
    const found = formulasIn(sharedParts(bookOf(rows.join(""))));
    expect(found.G3).toMatch(/^IF\(Workings!B7=ROW/);
    // Workings!B8 would be as far from H4 as Workings!B6 is from G2.
    expect(found.H4).toMatch(/^IF\(Workings!B9=ROW/);
  });

  it("stand for a range that is worked out cell by cell", () => {
    const parts = sharedParts(bookOf(row(inputs, cell("G2", "TITRE.CORRECTED(A2:B2*2,C2)"))));
    expect(formulasIn(parts).G2).toBe("Workings!E6");
    expect(formulasIn(parts, 2)).toMatchObject({
      C6: "Data!A2*2",
      D6: "Data!B2*2",
      E6: "AVERAGE(C6:D6)-AVERAGE(Data!C2)",
    });
  });

  it("stand one below another for a column that is worked out cell by cell", () => {
    const parts = sharedParts(bookOf(row(inputs, cell("G2", "TITRE.CORRECTED(A2:A4/2,C2)"))));
    expect(formulasIn(parts).G2).toBe("Workings!C6");
    expect(formulasIn(parts, 2)).toMatchObject({
      C6: "AVERAGE(D6:D8)-AVERAGE(Data!C2)",
      D6: "Data!A2/2",
      D7: "Data!A3/2",
      D8: "Data!A4/2",
    });
  });

  it("of a choice between two ranges are empty on the side that is not taken", () => {
    const formula = "TITRE.CORRECTED(IF(COUNT(A2:B2)&gt;0,A2:B2*1,D2),C2)";
    const parts = sharedParts(bookOf(row(inputs, cell("G2", formula))));
    expect(formulasIn(parts).G2).toBe("Workings!F6");
    expect(formulasIn(parts, 2)).toEqual({
      B6: "ROW(Data!A2)",
      C6: "IF(COUNT(Data!A2:B2)>0,1,2)",
      D6: 'IF(C6=1,Data!A2*1,"")',
      E6: 'IF(C6=1,Data!B2*1,"")',
      F6: "IF(C6=1,AVERAGE(D6:E6)-AVERAGE(Data!C2),AVERAGE(Data!D2)-AVERAGE(Data!C2))",
    });
  });

  it("take a call each where the plain formula would be too long for a cell", () => {
    const formula = "TITRE.MOLARITY(A2,B2)+TITRE.MOLARITY(A2,B2)+TITRE.MOLARITY(B2,A2)";
    const parts = sharedParts(bookOf(row(inputs, cell("G2", formula))));
    expect(formulasIn(parts).G2).toBe("Workings!C6+Workings!D6+Workings!E6");
  });
});

describe("what cannot be written in plain functions", () => {
  it.each([
    ["TITRE.METHANOL(A2)", "it is out of reach"],
    ["TITRE.NOTHING(A2)", "there is no function TITRE.NOTHING"],
    ["TITRE.DOSE(A2)", "TITRE.DOSE has no plain formula"],
    ["TITRE.CORRECTED(A2,", "the formula cannot be read at character 16"],
    ["TITRE.SOAP(A2,B2)", "its plain formula is longer than a cell can hold"],
    ["TITRE.CORRECTED((A2,B2),C2)", "several ranges at once"],
    ["TITRE.CORRECTED(May:June!A2,C2)", "several sheets at once"],
    ["TITRE.CORRECTED(titresOfMay,C2)", "there is no name titresOfMay"],
    ["TITRE.CORRECTED(Lots[Titre],C2)", "there is no table Lots"],
    ["TITRE.OUTLIERS(A:A)", "too large to be written out"],
    ["TITRE.CORRECTED(OFFSET(A2,0,0,1,2),C2)", "not taken apart"],
    ["TITRE.CORRECTED(A2,B2,C2)", "TITRE.CORRECTED takes 2 arguments"],
  ])("is left as it is and named with its reason: %s", (formula, reason) => {
    const bytes = bookOf(row(inputs, cell("G2", formula)));
    const { report, bytes: after } = shared(bytes);
    expect(report.left).toEqual([
      { cell: "Data!G2", reason: expect.stringContaining(reason) as string, isInPart: false },
    ]);
    expect(after).toEqual(bytes);
  });

  it("leaves the results of other add-ins alone: no working out on opening", () => {
    const rows = row(cell("G2", "TITRE.ACIDVALUE(A2,B2,C2)"), cell("H2", "_xldudf_CX_GET(A2)"));
    expect(sharedParts(bookOf(rows))["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
  });
});

describe("sentences", () => {
  const text = (formula: string): string =>
    `<c r="G2" t="str"><f>${formula}</f><v>above 5 %: &amp; more</v></c>`;

  it("keep their value and lose their formula", () => {
    const { bytes, report } = shared(bookOf(row(inputs, text("TITRE.ROUTE(A2)"))));
    expect(report).toMatchObject({ formulas: 0, sentences: 1, left: [], sheets: ["Data"] });
    expect(rowsIn(sharedParts(bookOf(row(inputs, text("TITRE.ROUTE(A2)")))))).toContain(
      '<c r="G2" t="inlineStr"><is><t>above 5 %: &amp; more</t></is></c>',
    );
    expect(bytes.length).toBeGreaterThan(0);
  });

  it("with something around them are kept where the cell holds a text", () => {
    const formula = 'IF(A2&gt;0,TITRE.ROUTE(A2),"")';
    expect(shared(bookOf(row(text(formula)))).report).toMatchObject({ sentences: 1, left: [] });
  });

  it("of which a figure is made are left, with the reason", () => {
    const { report } = shared(bookOf(row(cell("G2", "LEN(TITRE.ROUTE(A2))", "12"))));
    expect(report.left[0]?.reason).toContain("part of a larger formula");
  });
});
