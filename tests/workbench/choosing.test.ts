/** Words to choose from: written out in the file, standing in cells, and of columns that are new. */
import { describe, expect, it } from "vitest";
import { keyTo } from "../../src/workbench/choosing/list-keys";
import { Lists, listsIn } from "../../src/workbench/choosing/lists";
import { openHeadless } from "../../src/workbench/engine/node";
import { bookOf } from "./book";
import { bookOf as fileOf } from "../xlsx/files";
import { opened } from "./file";

describe("the words of a cell", () => {
  const area = (row: number, column: number, rows = 1) => ({ row, column, rows, columns: 1 });

  it("come from the file, also where they stand in cells that go by distance", async () => {
    const open = await openHeadless(
      bookOf([
        ["x", "y", "z"],
        ["a", "b", 3],
        ["c", null, "a"],
      ]),
    );
    const lists = new Lists(open.cells);
    const at = (row: number, column: number) =>
      lists.choices({ sheet: "Sheet", row, column })?.words;
    lists.ofFile = listsIn([
      {
        name: "Sheet",
        validations: [
          { areas: [area(5, 0, 3)], words: ["KOH", "NaOH"], isStrict: true },
          { areas: [area(5, 1, 3)], refersTo: "=A2:B2", isStrict: false },
          { areas: [area(5, 2, 3)], refersTo: "=Sheet!$A$1:$C$1", isStrict: false },
          { areas: [area(5, 3)], isStrict: true },
        ],
      },
    ]);
    expect(at(7, 0)).toEqual(["KOH", "NaOH"]);
    // a row further down the list is that of the next row, without the gap
    expect([at(5, 1), at(6, 1)]).toEqual([["a", "b"], ["c"]]);
    expect(at(6, 2)).toEqual(["x", "y", "z"]);
    expect([at(5, 3), at(8, 0), at(4, 0)]).toEqual([undefined, undefined, undefined]);
    open.close();
  });

  it("are read of a file as the format writes them, older and newer lists, and rules that are none", () => {
    const row = '<row r="1"><c r="A1"><v>1</v></c></row>';
    const list = (sqref: string, more: string, formula: string) =>
      `<dataValidation type="list" sqref="${sqref}"${more}><formula1>${formula}</formula1></dataValidation>`;
    const plain = [
      list("A2:A9 C2", ' showErrorMessage="1"', '"KOH, NaOH,"'),
      list("B2", ' showErrorMessage="1" errorStyle="warning"', "Words!$A$1:$A$3"),
      // its arrow is not shown
      list("D2", ' showDropDown="1"', '"a,b"'),
      '<dataValidation type="decimal" sqref="E2"><formula1>0</formula1></dataValidation>',
      "<dataValidation/>",
    ];
    const newer = `<extLst><ext xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}"><x14:dataValidations xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" count="1"><x14:dataValidation type="list"><x14:formula1><xm:f>Other!$B$1:$B$2</xm:f></x14:formula1><xm:sqref>F2:F3</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>`;
    const after = `<dataValidations count="5">${plain.join("")}</dataValidations>${newer}`;
    expect(opened(fileOf(row, after)).sheets[0]?.validations).toEqual([
      { areas: [area(1, 0, 8), area(1, 2)], words: ["KOH", "NaOH"], isStrict: true },
      { areas: [area(1, 1)], refersTo: "=Words!$A$1:$A$3", isStrict: false },
      { areas: [area(1, 3)], isStrict: false },
      { areas: [area(1, 4)], isStrict: false },
      { areas: [area(1, 5, 2)], refersTo: "=Other!$B$1:$B$2", isStrict: false },
    ]);
  });

  it("of a key are gone to by its letter, round again, and by the arrows no further than the ends", () => {
    const words = ["fryer", "lard", "Fish", "tallow"];
    expect(keyTo("f", 0, words)).toBe(2);
    expect(keyTo("f", 2, words)).toBe(0);
    expect(keyTo("z", 0, words)).toBeUndefined();
    expect(keyTo("Shift", 0, words)).toBeUndefined();
    expect([keyTo("ArrowUp", 0, words), keyTo("ArrowDown", 3, words)]).toEqual([0, 3]);
    expect([keyTo("Home", 2, words), keyTo("End", 0, words)]).toEqual([0, 3]);
  });
});
