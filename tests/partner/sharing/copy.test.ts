import { describe, expect, it } from "vitest";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { cautions } from "../../../src/core/batch/cautions";
import { leftWords, reportWords } from "../../../src/partner/sharing";
import { version } from "../../../src/partner/sharing/version";
import { root } from "../../rules/sources-of";
import { opened } from "../../xlsx/answers";
import { bookOf, made, office, partsOf, partsWith, sheetOf, zipped } from "../../xlsx/files";
import { formulasIn, rowsIn, shared, sharedParts, wordsIn } from "./shared";

const inputs = '<c r="A2"><v>2.4</v></c><c r="B2"><v>3.5</v></c>';
const row = (cells: string, number = 2): string => `<row r="${number}">${cells}</row>`;
const call = '<c r="G2"><f>TITRE.ACIDVALUE(A2,B2,10)</f><v>1.5</v></c>';

function withParts(rows: string, more: Record<string, string> = {}): Record<string, string> {
  return { ...partsWith(sheetOf(rows)), ...more };
}

describe("a file with nothing to convert", () => {
  it.each(["partner", "numbers"] as const)("comes out as the very bytes: %s", (kind) => {
    const bytes = bookOf(row(inputs));
    const { bytes: after, report } = shared(bytes, { kind });
    expect(after).toBe(bytes);
    expect(reportWords(report)[0]).toMatch(/^Nothing to convert/);
  });
});

describe("what a copy does to the rest of the file", () => {
  it.each(["office", "charts", "pivot", "threaded", "tidy", "dynamic"])(
    "leaves every part of %s as it was, but for its sheet",
    (name) => {
      const before = partsOf(made(name));
      const first = Object.keys(before).find((part) => /worksheets\/sheet1\.xml$/.test(part)) ?? "";
      const sheet = before[first] ?? "";
      const added = '<row r="9000"><c r="A9000"><f>TITRE.CORRECTED(A1,B1)</f><v>1</v></c></row>';
      const withOurs = {
        ...before,
        [first]: sheet.replace("</sheetData>", `${added}</sheetData>`),
      };
      const after = sharedParts(zipped(withOurs));
      const own =
        /worksheets\/sheet1\.xml$|^xl\/workbook\.xml$|workbook\.xml\.rels$|styles\.xml$|Content_Types/;
      const panes = /webextensions|^_rels\/\.rels$/;
      for (const [part, text] of Object.entries(withOurs)) {
        if (!own.test(part) && !panes.test(part)) expect(after[part], part).toBe(text);
      }
      const plain = withOurs[first]
        ?.replace("TITRE.CORRECTED(A1,B1)", "AVERAGE(A1)-AVERAGE(B1)")
        .replace("_xldudf_TITRE_CORRECTED(C2:C6)", "AVERAGE(C2:C6)-AVERAGE(0)");
      expect(after[first]).toBe(plain);
    },
  );

  it("takes out the panes of add-ins, their parts, relationships and content types", () => {
    const before = partsOf(made("threaded"));
    expect(Object.keys(before).filter((name) => /webext/i.test(name))).not.toEqual([]);
    for (const kind of ["partner", "numbers"] as const) {
      const { report, bytes } = shared(made("threaded"), { kind });
      const after = partsOf(bytes);
      expect(report.webExtensions).toBe(1);
      expect(Object.keys(after).filter((name) => /webext/i.test(name))).toEqual([]);
      expect(after["_rels/.rels"]).not.toMatch(/webext/i);
      expect(after["[Content_Types].xml"]).not.toMatch(/webext/i);
      expect(opened(bytes).kept.some(({ what }) => what === "web extensions")).toBe(false);
    }
  });

  it("takes the cells that lost their formula off the order of calculation", () => {
    const chain = `<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="G2" i="1"/><c r="H2" i="1"/></calcChain>`;
    const route = '<c r="H2" t="str"><f>TITRE.ROUTE(A2)</f><v>fine</v></c>';
    const parts = withParts(row(call + route), { "xl/calcChain.xml": chain });
    const relationships = parts["xl/_rels/workbook.xml.rels"] ?? "";
    parts["xl/_rels/workbook.xml.rels"] = relationships.replace(
      "</Relationships>",
      `<Relationship Id="rId7" Type="${office}/calcChain" Target="calcChain.xml"/></Relationships>`,
    );
    expect(sharedParts(zipped(parts))["xl/calcChain.xml"]).toBe(
      chain.replace('<c r="H2" i="1"/>', ""),
    );
    const numbers = sharedParts(zipped(parts), { kind: "numbers" });
    expect(numbers["xl/calcChain.xml"]).toBeUndefined();
    expect(numbers["xl/_rels/workbook.xml.rels"]).not.toContain("calcChain");
  });

  it("does not have the file worked out anew when no helper cell waits for it", () => {
    const parts = withParts(row('<c r="G2"><f>TITRE.CORRECTED(A2,B2)</f><v>1</v></c>'));
    const workbook = parts["xl/workbook.xml"] ?? "";
    const old = workbook.replace(
      "</sheets>",
      '</sheets><calcPr calcId="171027" fullCalcOnLoad="1"/>',
    );
    const after = sharedParts(zipped({ ...parts, "xl/workbook.xml": old }));
    expect(after["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
    const later = workbook.replace("</sheets>", '</sheets><calcPr calcId="999999"/>');
    const kept = sharedParts(zipped({ ...parts, "xl/workbook.xml": later }));
    expect(kept["xl/workbook.xml"]).toContain('<calcPr calcId="999999"/>');
  });

  it("adds its sheets under names that are free", () => {
    const parts = withParts(row(inputs + call));
    const workbook = parts["xl/workbook.xml"] ?? "";
    const renamed = workbook.replace('name="Data"', 'name="workings"');
    const { report, bytes } = shared(zipped({ ...parts, "xl/workbook.xml": renamed }));
    expect(report).toMatchObject({ workings: "Workings 2", readMe: "Read me" });
    const after = partsOf(bytes);
    expect(formulasIn(after).G2).toBe("'Workings 2'!D6");
    expect(formulasIn(after, 2)).toMatchObject({ C6: "workings!A2*workings!B2" });
  });

  it("leaves what it was given as it was", () => {
    const bytes = bookOf(row(inputs + call));
    const before = bytes.slice();
    shared(bytes);
    shared(bytes, { kind: "numbers" });
    expect(bytes).toEqual(before);
  });

  it("comes out the same each time", () => {
    const bytes = bookOf(row(inputs + call));
    expect(shared(bytes).bytes).toEqual(shared(bytes).bytes);
  });
});

describe("a copy with numbers only", () => {
  const rows = row(
    [
      '<c r="A2"><f>1+1</f><v>2.0</v></c>',
      '<c r="B2" s="0" t="str"><f>"a"&amp;"b"</f><v>ab</v></c>',
      '<c r="C2" t="e"><f>1/0</f><v>#DIV/0!</v></c>',
      '<c r="D2" t="b"><f t="shared" ref="D2:E2" si="0">A2=2</f><v>1</v></c>',
      '<c r="E2" t="b"><f t="shared" si="0"/><v>0</v></c>',
      '<c r="F2" cm="1"><f t="array" ref="F2:G2">TITRE.OUTLIERS(A2:B2)</f><v>1</v></c>',
      '<c r="G2"><v>0</v></c>',
      '<c r="H2" t="str"><f>""</f><v></v></c>',
    ].join(""),
  );

  it("drops every formula, of ours or not, and keeps every value", () => {
    const { bytes, report } = shared(bookOf(rows), { kind: "numbers" });
    expect(report).toMatchObject({ formulas: 7, helperCells: 0, workings: undefined });
    expect(rowsIn(partsOf(bytes))).toBe(
      row(
        [
          '<c r="A2"><v>2.0</v></c>',
          '<c r="B2" t="inlineStr"><is><t>ab</t></is></c>',
          '<c r="C2" t="e"><v>#DIV/0!</v></c>',
          '<c r="D2" t="b"><v>1</v></c>',
          '<c r="E2" t="b"><v>0</v></c>',
          '<c r="F2"><v>1</v></c>',
          '<c r="G2"><v>0</v></c>',
          '<c r="H2"/>',
        ].join(""),
      ),
    );
  });

  it("lists rules and names that call ours, which hold no value", () => {
    const rule =
      '<dataValidations count="1"><dataValidation type="custom" sqref="A2:A9"><formula1>TITRE.CORRECTED(A2,B2)&gt;3</formula1></dataValidation></dataValidations>';
    const parts = partsWith(sheetOf(row('<c r="A2"><f>1+1</f><v>2</v></c>'), rule));
    const named = (parts["xl/workbook.xml"] ?? "").replace(
      "</sheets>",
      '</sheets><definedNames><definedName name="today">TITRE.CORRECTED(Data!$A$2)</definedName></definedNames>',
    );
    const { report } = shared(zipped({ ...parts, "xl/workbook.xml": named }), { kind: "numbers" });
    expect(report.left.map(({ cell }) => cell)).toEqual([
      "the rule for what may be typed in A2:A9 on Data",
      "the name today",
    ]);
  });

  it("shows every value that the file showed", () => {
    for (const name of ["office", "charts", "dynamic", "tidy"]) {
      const [was, is] = [opened(made(name)), opened(shared(made(name), { kind: "numbers" }).bytes)];
      for (const [at, sheet] of was.sheets.entries()) {
        const now = is.sheets[at]?.cells.filter(({ value }) => value !== undefined && value !== "");
        const before = sheet.cells.filter(({ value }) => value !== undefined && value !== "");
        expect(now?.map(({ row: line, column, value }) => [line, column, value])).toEqual(
          before.map(({ row: line, column, value }) => [line, column, value]),
        );
        expect(is.sheets[at]?.cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
      }
    }
  });
});

describe("the sheet that says what the copy is", () => {
  it("tells the file, the day, the version, what to change, the constants and the cautions", () => {
    const bytes = bookOf(row(inputs + call));
    const words = wordsIn(sharedParts(bytes, { day: "2026-05-04" }), 3).join("\n");
    expect(words).toMatch(/^Partner copy\n/);
    for (const told of [
      "log.xlsx",
      "2026-05-04",
      `Titrebook ${version}`,
      "Sheet Data\nA2, B2",
      "1 formula on Data",
      "56.1 g/mol\nISO 660:2020",
      ...cautions,
    ]) {
      expect(words).toContain(told.replaceAll("&", "&amp;"));
    }
  });

  it("says no day where none is given, and lists what was left", () => {
    const left = '<c r="H2"><f>TITRE.METHANOL(A2)</f><v>1</v></c>';
    const words = wordsIn(sharedParts(bookOf(row(inputs + call + left))), 3).join("\n");
    expect(words).not.toContain("Made on");
    expect(words).toContain("Data!H2, left as it is: it is out of reach.");
  });

  it("names the version that package.json has", () => {
    const { version: known } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
      version: string;
    };
    expect(version).toBe(known);
  });
});

describe("the report in words", () => {
  it("is one sentence each, told apart by what was done", () => {
    const left = '<c r="H2"><f>TITRE.METHANOL(A2)</f><v>1</v></c>';
    const { report } = shared(bookOf(row(inputs + call + left)));
    expect(reportWords(report)).toEqual([
      "1 formula on Data now calls plain functions that every spreadsheet program has.",
      "2 cells of steps in between, on the sheet Workings that was added.",
      "1 formula not converted, each with its reason:",
    ]);
    expect(report.left.map(leftWords)).toEqual(["Data!H2, left as it is: it is out of reach."]);
  });
});

describe("a file that is no workbook", () => {
  it("is refused with its sentence, and nothing is thrown", () => {
    expect(() => shared(new Uint8Array([1, 2, 3]))).toThrow("This file is not an .xlsx workbook");
  });
});
