/** Rows of tables: those put in between take the formulas of the columns, in the form of the file. */
import { describe, expect, it } from "vitest";
import { isFileProblem, type Workbook } from "../../../src/xlsx";
import { restructured } from "../../../src/xlsx/structure";
import type { LinesAct } from "../../../src/xlsx/structure/act";
import { formulaIn, opened, sheetIn } from "../answers";
import { main, office, partsOf, partsWith, sheetOf, zipped } from "../files";

const call = "_xldudf_TITRE_ACIDVALUE(Runs[[#This Row],[Titre]],0.1,$B$1)";

/** A table from row 3 to 6 with a call of ours in its second column, in one of the forms files have. */
function book(form: "plain" | "array" | "link", totals = false): Workbook {
  const text = form === "link" ? `[1]!${call}` : call;
  const open = form === "array" ? (cell: string) => `<f t="array" ref="${cell}">` : () => "<f>";
  const words = (cell: string, text: string) =>
    `<c r="${cell}" t="inlineStr"><is><t>${text}</t></is></c>`;
  const rows = [4, 5, 6].map(
    (row) =>
      `<row r="${row}"><c r="A${row}" s="1"><v>2.${row}</v></c><c r="B${row}" cm="1">${open(`B${row}`)}${text}</f><v>1</v></c></row>`,
  );
  const last = totals ? `<row r="7">${words("A7", "All")}</row>` : "";
  const sheet = sheetOf(
    `<row r="1"><c r="B1"><v>10</v></c></row><row r="3">${words("A3", "Titre")}${words("B3", "Acid value")}</row>${rows.join("")}${last}`,
    '<tableParts count="1"><tablePart r:id="r1"/></tableParts>',
  );
  const marks = `<metadata xmlns="${main}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;
  const array = form === "array" ? ' array="1"' : "";
  const links = (of: string) =>
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${of}</Relationships>`;
  const parts = partsWith(sheet, {
    "xl/worksheets/_rels/sheet1.xml.rels": links(
      `<Relationship Id="r1" Type="${office}/table" Target="../tables/table1.xml"/>`,
    ),
    "xl/tables/table1.xml": `<table xmlns="${main}" id="1" name="Runs" displayName="Runs" ref="A3:B${totals ? 7 : 6}"${totals ? ' totalsRowCount="1"' : ""}><autoFilter ref="A3:B6"/><tableColumns count="2"><tableColumn id="1" name="Titre"/><tableColumn id="2" name="Acid value"><calculatedColumnFormula${array}>${text}</calculatedColumnFormula></tableColumn></tableColumns></table>`,
    "xl/metadata.xml": marks,
  });
  const rels = parts["xl/_rels/workbook.xml.rels"] ?? "";
  return opened(
    zipped({
      ...parts,
      "xl/_rels/workbook.xml.rels": rels.replace(
        "</Relationships>",
        `<Relationship Id="r9" Type="${office}/sheetMetadata" Target="metadata.xml"/></Relationships>`,
      ),
    }),
  );
}

const insert = (before: number, count = 1): LinesAct => ({
  do: "insert-rows",
  sheet: "Data",
  before,
  count,
});
const remove = (first: number, count = 1): LinesAct => ({
  do: "delete-rows",
  sheet: "Data",
  first,
  count,
});

function after(of: Workbook, act: LinesAct): Workbook {
  const made = restructured(of, act);
  if (isFileProblem(made)) throw new Error(JSON.stringify(made.fields));
  return made;
}

const troubleOf = (of: Workbook, act: LinesAct): unknown => {
  const made = restructured(of, act);
  return isFileProblem(made) && "trouble" in made.fields ? made.fields.trouble : "none";
};

describe("rows put in between those of a table", () => {
  it.each(["plain", "array", "link"] as const)(
    "take its column's call, where calls are %s",
    (form) => {
      const made = after(book(form), insert(4, 2));
      expect(sheetIn(made).tables[0]?.area).toMatchObject({ row: 2, rows: 6 });
      for (const cell of ["B4", "B5", "B6", "B7", "B8"]) {
        expect(formulaIn(made, cell)).toBe("=TITRE.ACIDVALUE(Runs[[#This Row],[Titre]],0.1,$B$1)");
      }
      const [, cell] =
        /(<c r="B5".*?<\/c>)/.exec(partsOf(made.file.bytes)["xl/worksheets/sheet1.xml"] ?? "") ??
        [];
      expect(cell).toContain(
        form === "array" ? 'cm="1"><f ca="1" t="array" ref="B5">' : '<f ca="1">',
      );
      const old = partsOf(made.file.bytes)["xl/worksheets/sheet1.xml"] ?? "";
      expect(old.match(/\[1\]!_xldudf/g)?.length ?? 0).toBe(form === "link" ? 3 : 0);
    },
  );

  it("look like the row above, or below the headings like the row after", () => {
    const styleOf = (act: LinesAct, cell: string) =>
      new RegExp(`<c r="${cell}"([^>]*)`).exec(
        partsOf(after(book("plain"), act).file.bytes)["xl/worksheets/sheet1.xml"] ?? "",
      )?.[1];
    expect(styleOf(insert(4), "A5")).toBe(' s="1"/');
    expect(styleOf(insert(3), "A4")).toBe(' s="1"/');
  });

  it("are of it before its totals, and not of it below its last row", () => {
    const table = partsOf(after(book("plain", true), insert(6)).file.bytes)["xl/tables/table1.xml"];
    expect(table).toMatch(/ ref="A3:B8".*<autoFilter ref="A3:B7"\/>/);
    expect(sheetIn(after(book("plain", true), insert(6))).tables[0]?.area.rows).toBe(6);
    expect(sheetIn(after(book("plain"), insert(6))).tables[0]?.area.rows).toBe(4);
    expect(formulaIn(after(book("plain"), insert(6)), "B7")).toBeUndefined();
  });
});

describe("rows of a table", () => {
  it.each([
    [remove(2), false, "cuts-heading"],
    [remove(3, 3), false, "empties-table"],
    [remove(6), true, "cuts-totals"],
    [
      { do: "insert-columns", sheet: "Data", before: 1, count: 1 } as LinesAct,
      false,
      "table-columns",
    ],
    [
      { do: "delete-columns", sheet: "Data", first: 1, count: 1 } as LinesAct,
      false,
      "table-columns",
    ],
    [remove(4, 2), true, "none"],
    [{ do: "insert-columns", sheet: "Data", before: 2, count: 1 } as LinesAct, false, "none"],
  ] as const)("%j, with totals: %s", (act, totals, trouble) => {
    expect(troubleOf(book("plain", totals), act)).toBe(trouble);
  });
});
