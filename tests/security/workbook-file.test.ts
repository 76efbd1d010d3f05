/** A workbook that a stranger mailed: what it may say and must not do. */
import { describe, expect, it } from "vitest";
import { isFileProblem, keptWords, openXlsx, sayFile } from "../../src/xlsx";
import { limits } from "../../src/xlsx/limits";
import { bookOf, office, partsWith, sheetOf, zipped } from "../xlsx/files";
import { namesOfObjects } from "./names-as-keys";

const one = '<row r="1"><c r="A1"><v>1</v></c></row>';
const packaged = "http://schemas.openxmlformats.org/package/2006/relationships";

function opened(bytes: Uint8Array) {
  const book = openXlsx(bytes);
  if (isFileProblem(book)) throw new Error(sayFile(book));
  return book;
}

/** With the text of the part that lists the sheets changed. */
function listed(change: (text: string) => string): Uint8Array {
  const parts = partsWith(sheetOf(one));
  return zipped({ ...parts, "xl/workbook.xml": change(parts["xl/workbook.xml"] ?? "") });
}

function twoSheets(first: string, second: string): Uint8Array {
  const parts = partsWith(sheetOf(one), { "xl/worksheets/sheet2.xml": sheetOf(one) });
  const more = `<sheet name="${second}" sheetId="2" r:id="rId2"/></sheets>`;
  const link = `<Relationship Id="rId2" Type="${office}/worksheet" Target="worksheets/sheet2.xml"/></Relationships>`;
  return zipped({
    ...parts,
    "xl/workbook.xml": (parts["xl/workbook.xml"] ?? "")
      .replace('"Data"', `"${first}"`)
      .replace("</sheets>", more),
    "xl/_rels/workbook.xml.rels": (parts["xl/_rels/workbook.xml.rels"] ?? "").replace(
      "</Relationships>",
      link,
    ),
  });
}

describe("words of a file that mean something to the language", () => {
  it.each(namesOfObjects)("%s leads to nothing that is listed as kept", (name) => {
    const bytes = zipped({
      ...partsWith(sheetOf(one)),
      "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships xmlns="${packaged}"><Relationship Id="rId1" Type="http://x/${name}" Target="x.xml"/></Relationships>`,
    });
    expect(opened(bytes).kept.map(keptWords)).toEqual([]);
  });

  it.each(namesOfObjects)(
    "%s is no state of a sheet, and the workbook can go to the page",
    (name) => {
      const { sheets } = opened(
        listed((text) => text.replace('sheetId="1"', `sheetId="1" state="${name}"`)),
      );
      expect(sheets.map(({ state }) => state)).toEqual(["visible"]);
      expect(structuredClone(sheets)).toEqual(sheets);
    },
  );
});

describe("sheets that are not told apart by their names", () => {
  it.each([
    ["Lots", "Lots"],
    ["Lots", "LOTS"],
    ["", "Lots"],
  ])("'%s' and '%s' are refused", (first, second) => {
    const book = openXlsx(twoSheets(first, second));
    expect(isFileProblem(book) && sayFile(book)).toContain("not told apart by their names");
  });
});

describe("what a sheet says of its columns, merged cells and panes", () => {
  it("counts each column once, however often it is told", () => {
    const columns = '<col min="1" max="16384" width="9"/>'.repeat(1000);
    const { widths } = opened(bookOf(one, "", `<cols>${columns}</cols>`)).sheets[0] ?? {};
    expect(widths).toMatchObject([{ first: 0, last: limits.columns - 1 }]);
  });

  it("is never wider than a column can be", () => {
    const columns = '<col min="1" max="4294967295" width="1e300"/>';
    const { widths } = opened(bookOf(one, "", `<cols>${columns}</cols>`)).sheets[0] ?? {};
    expect(widths).toMatchObject([{ last: limits.columns - 1, width: limits.width }]);
  });

  it("merges no cell twice, in little time", () => {
    const merges = '<mergeCell ref="A1:XFD1048576"/><mergeCell ref="B2:C3"/>'.repeat(2000);
    const book = opened(bookOf(one, `<mergeCells>${merges}</mergeCells>`));
    expect(book.sheets[0]?.merged).toHaveLength(1);
  });

  it("keeps areas that lie beside and below each other", () => {
    const merges = ["A1:B1", "C1:C3", "A2:B3", "A4:C4"].map((ref) => `<mergeCell ref="${ref}"/>`);
    const book = opened(bookOf(one, `<mergeCells>${merges.join("")}</mergeCells>`));
    expect(book.sheets[0]?.merged).toHaveLength(4);
  });

  it.each(["1e999", "-5", "NaN", "99999999"])("freezes no rows for a split of %s", (split) => {
    const pane = `<sheetViews><sheetView><pane state="frozen" ySplit="${split}" xSplit="${split}"/></sheetView></sheetViews>`;
    const { frozenRows, frozenColumns } = opened(bookOf(one, "", pane)).sheets[0] ?? {};
    expect([frozenRows, frozenColumns]).toEqual([0, 0]);
  });

  it("takes a number format longer than any for none", () => {
    const styles = `<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="1"><numFmt numFmtId="164" formatCode="${"[".repeat(300)}"/></numFmts><cellXfs count="1"><xf numFmtId="164"/></cellXfs></styleSheet>`;
    const parts = partsWith(sheetOf(one), { "xl/styles.xml": styles });
    const link = `<Relationship Id="rId9" Type="${office}/styles" Target="styles.xml"/></Relationships>`;
    const rels = (parts["xl/_rels/workbook.xml.rels"] ?? "").replace("</Relationships>", link);
    const book = opened(zipped({ ...parts, "xl/_rels/workbook.xml.rels": rels }));
    expect(book.looks).toMatchObject([{ format: "General" }]);
  });
});
