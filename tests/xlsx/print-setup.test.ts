import { describe, expect, it } from "vitest";
import { type Edit, patchXlsx } from "../../src/xlsx";
import { codeOf, patched } from "./answers";
import { bookOf, made, partsOf } from "./files";

const print = (sheet: string, setup: object): Edit => ({ do: "print-setup", sheet, ...setup });
const sheetXml = (bytes: Uint8Array) => partsOf(bytes)["xl/worksheets/sheet1.xml"] ?? "";
const workbookXml = (bytes: Uint8Array) => partsOf(bytes)["xl/workbook.xml"] ?? "";

describe("how a sheet is printed", () => {
  const whole = {
    area: { row: 0, column: 0, rows: 12, columns: 28 },
    landscape: true,
    fitToWidth: true,
    repeatRows: { row: 2, rows: 1 },
  };

  it("stands in the sheet where the format wants it, and its names in the workbook", () => {
    const book = patched(bookOf(""), [print("Data", whole)]);
    const xml = sheetXml(book);
    expect(xml).toContain('<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>');
    expect(xml).toContain(
      '<pageSetup paperSize="9" orientation="landscape" fitToWidth="1" fitToHeight="0"/>',
    );
    expect(xml.indexOf("<sheetPr>")).toBeLessThan(xml.indexOf("<sheetData"));
    expect(xml.indexOf("<pageSetup")).toBeGreaterThan(xml.indexOf("<sheetData"));
    expect(workbookXml(book)).toContain(
      "<definedNames>" +
        '<definedName name="_xlnm.Print_Area" localSheetId="0">\'Data\'!$A$1:$AB$12</definedName>' +
        '<definedName name="_xlnm.Print_Titles" localSheetId="0">\'Data\'!$3:$3</definedName>' +
        "</definedNames>",
    );
  });

  it("changes what is there and keeps the rest of it", () => {
    const book = bookOf(
      "",
      '<pageMargins left="1"/><pageSetup paperSize="1" scale="80" orientation="portrait"/>',
    );
    expect(sheetXml(patched(book, [print("Data", { landscape: true })]))).toContain(
      '<pageMargins left="1"/><pageSetup paperSize="1" scale="80" orientation="landscape"/>',
    );
  });

  it("begins a second page at a row, beside breaks that are there, and once", () => {
    const second = { landscape: false, fitToWidth: true, secondPage: 4 };
    const once = patched(bookOf("", '<pageSetup paperSize="1"/>'), [print("Data", second)]);
    expect(sheetXml(once)).toContain(
      'fitToHeight="0"/><rowBreaks count="1" manualBreakCount="1"><brk id="4" max="16383" man="1"/></rowBreaks>',
    );
    expect(sheetXml(patched(once, [print("Data", second)])).match(/<brk /g)).toHaveLength(1);
    const twice = sheetXml(patched(once, [print("Data", { secondPage: 9 })]));
    expect(twice).toContain('<rowBreaks count="2" manualBreakCount="2"><brk id="4"');
    expect(twice).toContain('<brk id="9" max="16383" man="1"/></rowBreaks>');
  });

  it("replaces an area that was given before, and no other sheet's", () => {
    const area = (rows: number) => ({ area: { row: 0, column: 0, rows, columns: 2 } });
    const first = patched(made("charts"), [print("Log book", area(3)), print("Totals", area(4))]);
    const then = workbookXml(patched(first, [print("Totals", area(9))]));
    expect(then).toContain("localSheetId=\"0\">'Log book'!$A$1:$B$3<");
    expect(then).toContain("localSheetId=\"1\">'Totals'!$A$1:$B$9<");
    expect(then).not.toContain("$A$1:$B$4<");
  });

  it("is refused outside the sheet, and on a sheet that is not there", () => {
    const area = { row: 0, column: 0, rows: 0, columns: 1 };
    expect(codeOf(patchXlsx(bookOf(""), [print("Data", { area })]))).toBe("outside-sheet");
    expect(codeOf(patchXlsx(bookOf(""), [print("None", whole)]))).toBe("no-sheet");
  });
});
