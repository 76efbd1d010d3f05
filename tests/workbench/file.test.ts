/** A file in the grid and back: what one types, and nothing else, reaches the file. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { BooleanNumber, CellValueType, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { bookOf, partsOf, partsWith, sheetOf, zipped } from "../xlsx/files";
import { type FileInGrid, fixture, fixtures, inGrid, opened } from "./file";

const cellIn = (bytes: Uint8Array, sheet: string, row: number, column: number) =>
  opened(bytes)
    .sheets.find(({ name }) => name === sheet)
    ?.cells.find((cell) => cell.row === row && cell.column === column);

/** Sets a cell as the grid's own commands do, with whatever it is to hold. */
async function set(
  { grid }: FileInGrid,
  [sheet, row, column]: readonly [string, number, number],
  value: object,
): Promise<void> {
  await grid.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
    unitId: grid.cells.names.unit,
    subUnitId: grid.cells.names.sheetId(sheet),
    range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
    value,
  });
  await grid.computed();
}

function changedParts(before: Uint8Array, after: Uint8Array): string[] {
  const [old, now] = [partsOf(before), partsOf(after)];
  return [...new Set([...Object.keys(old), ...Object.keys(now)])].filter(
    (name) => old[name] !== now[name],
  );
}

describe("a file in the grid", () => {
  for (const name of fixtures) {
    it(`saves ${name}.xlsx unedited byte for byte`, () =>
      inGrid(fixture(name), async (file) => {
        expect((await file.edits()).edits).toEqual([]);
        expect(await file.saved()).toBe(file.workbook.file.bytes);
      }));
  }

  it("writes a figure that is typed and the results that follow from it, in one part", () =>
    inGrid(fixture("charts"), async (file) => {
      await file.grid.type({ sheet: "Log book", row: 4, column: 2 }, [[2.5]]);
      const saved = await file.saved();
      expect(cellIn(saved, "Log book", 4, 2)?.value).toBe(2.5);
      // By hand: 56.1 x 0.1 x 2.5 / 10.02, and twice the titre.
      expect(cellIn(saved, "Log book", 4, 4)?.value).toBeCloseTo((56.1 * 0.1 * 2.5) / 10.02, 12);
      expect(cellIn(saved, "Log book", 4, 7)?.value).toBe(5);
      expect(cellIn(saved, "Log book", 4, 4)?.formula).toBe("=56.1*0.1*C5/D5");
      expect(changedParts(fixture("charts"), saved)).toEqual(["xl/worksheets/sheet1.xml"]);
    }));

  it("keeps the look of a cell that is typed into", () =>
    inGrid(fixture("charts"), async (file) => {
      const before = cellIn(fixture("charts"), "Log book", 4, 2);
      await file.grid.type({ sheet: "Log book", row: 4, column: 2 }, [[2.5]]);
      expect(cellIn(await file.saved(), "Log book", 4, 2)?.look).toBe(before?.look);
    }));

  it("writes our functions and newer ones as files hold them", () =>
    inGrid(
      bookOf('<row r="1"><c r="A1"><v>2</v></c><c r="B1"><v>4</v></c></row>'),
      async (file) => {
        await file.grid.type({ sheet: "Data", row: 1, column: 0 }, [
          ["=TITRE.CORRECTED({2.4,2.5,2.45},0.15)", "=STDEV.S(A1:B1)"],
        ]);
        const sheet = partsOf(await file.saved())["xl/worksheets/sheet1.xml"] ?? "";
        expect(sheet).toContain("<f>_xldudf_TITRE_CORRECTED({2.4,2.5,2.45},0.15)</f><v>2.3</v>");
        // By hand: the square root of ((2 - 3)^2 + (4 - 3)^2) / 1.
        expect(sheet).toMatch(/<f>_xlfn\.STDEV\.S\(A1:B1\)<\/f><v>1\.414213562373095/);
      },
    ));

  it("writes an error as an error, and an answer over many cells with its marks", () =>
    inGrid(
      bookOf('<row r="1"><c r="A1"><v>2</v></c><c r="B1"><v>3</v></c></row>'),
      async (file) => {
        await file.grid.type({ sheet: "Data", row: 2, column: 0 }, [["=1/0", "=A1:B1*10"]]);
        const saved = await file.saved();
        expect(cellIn(saved, "Data", 2, 0)?.value).toEqual({ error: "#DIV/0!" });
        const anchor = cellIn(saved, "Data", 2, 1);
        expect(anchor?.value).toBe(20);
        expect(anchor?.array).toMatchObject({ row: 2, column: 1, rows: 1, columns: 2 });
        expect(cellIn(saved, "Data", 2, 2)).toMatchObject({
          value: 30,
          spilledFrom: { row: 2, column: 1 },
        });
      },
    ));

  it("lets an answer over many cells go when its formula is replaced", () =>
    inGrid(fixture("charts"), async (file) => {
      const spilled = file.before.sheets.flatMap(({ name, spills }) =>
        [...spills].flatMap(([row, cells]) =>
          [...cells].map(([column, spill]) => ({ name, row, column, spill })),
        ),
      );
      const first = spilled[0];
      if (!first) throw new Error("nothing spills");
      await file.grid.type({ sheet: first.name, row: first.row, column: first.column }, [[7]]);
      const saved = await file.saved();
      expect(cellIn(saved, first.name, first.row, first.column)).toMatchObject({ value: 7 });
      const below = cellIn(saved, first.name, first.row + first.spill.rows - 1, first.column);
      expect(below?.value).toBe(first.spill.rows > 1 ? undefined : 7);
    }));

  /** B33 lies in what BUDGET answers from A31 on; its value there is the mean blank, 0.15 mL. */
  const underAnswer = { sheet: "Replicates", row: 32, column: 1 };
  const answers = (bytes: Uint8Array) =>
    [cellIn(bytes, "Replicates", 30, 0), cellIn(bytes, "Replicates", 31, 1)].map(
      (cell) => cell?.value,
    );
  const logbook = () => new Uint8Array(readFileSync(join(root, "sample-workbooks/logbook.xlsx")));

  it("saves what was typed into the way of an answer over many cells, which then has one", async () => {
    let saved: Uint8Array = logbook();
    await inGrid(saved, async (file) => {
      await file.grid.type(underAnswer, [[5.25]]);
      saved = await file.saved();
    });
    expect(cellIn(saved, "Replicates", 32, 1)?.value).toBe(5.25);
    expect(cellIn(saved, "Replicates", 30, 0)?.array).toMatchObject({ rows: 1, columns: 1 });
    expect(cellIn(saved, "Replicates", 31, 1)?.value).toBeUndefined();
    await inGrid(saved, async (file) => {
      await file.grid.type(underAnswer, [[null]]);
      const again = await file.saved();
      // By hand: the mean of 5.20, 5.25, 5.20 and 6.10 mL.
      expect(answers(again)).toEqual(["source", 5.4375]);
      expect(cellIn(again, "Replicates", 32, 1)?.value).toBe(0.15);
    });
  });

  it("has nothing to save when that was taken away again", () =>
    inGrid(logbook(), async (file) => {
      await file.grid.type(underAnswer, [[5.25]]);
      await file.grid.type(underAnswer, [[null]]);
      expect((await file.edits()).edits).toEqual([]);
    }));

  it("keeps a text a text, whatever it begins with", () =>
    inGrid(
      bookOf('<row r="1"><c r="A1" t="inlineStr"><is><t>007</t></is></c></row>'),
      async (file) => {
        expect(file.grid.value({ sheet: "Data", row: 0, column: 0 })).toBe("007");
        const text = { v: "=1+1", t: CellValueType.FORCE_STRING, f: null };
        await set(file, ["Data", 1, 0], text);
        expect(cellIn(await file.saved(), "Data", 1, 0)).toMatchObject({ value: "=1+1" });
        expect(cellIn(await file.saved(), "Data", 1, 0)?.formula).toBeUndefined();
      },
    ));

  it("writes a text of several lines as it stands in the cell", () =>
    inGrid(bookOf('<row r="1"><c r="A1"><v>2</v></c></row>'), async (file) => {
      const body = {
        dataStream: "first\rsecond\r\n",
        paragraphs: [{ startIndex: 5 }, { startIndex: 12 }],
      };
      await set(file, ["Data", 0, 0], {
        v: null,
        f: null,
        p: { id: "d", documentStyle: {}, body },
      });
      expect(cellIn(await file.saved(), "Data", 0, 0)?.value).toBe("first\nsecond");
    }));

  it("empties a cell and keeps its look", () =>
    inGrid(fixture("charts"), async (file) => {
      await file.grid.type({ sheet: "Log book", row: 4, column: 1 }, [[null]]);
      const cell = cellIn(await file.saved(), "Log book", 4, 1);
      expect(cell?.value).toBeUndefined();
    }));

  it("writes a look that was given, and nothing else of the cell", () =>
    inGrid(bookOf('<row r="1"><c r="A1"><v>2</v></c></row>'), async (file) => {
      await set(file, ["Data", 0, 0], {
        s: { bl: BooleanNumber.TRUE, bg: { rgb: "#dfeaea" }, n: { pattern: "0.00" } },
      });
      const saved = await file.saved();
      const look = opened(saved).looks[cellIn(saved, "Data", 0, 0)?.look ?? 0];
      expect(look).toMatchObject({ bold: true, fill: "#dfeaea", format: "0.00" });
      expect(cellIn(saved, "Data", 0, 0)?.value).toBe(2);
    }));

  it("counts days from 1904 where the file does", () =>
    inGrid(
      zipped(
        partsWith(
          sheetOf(
            '<row r="1"><c r="A1" s="1"><v>1</v></c><c r="B1"><f>YEAR(A1)</f><v>1904</v></c></row>',
          ),
          {
            "xl/workbook.xml":
              '<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><workbookPr date1904="1"/><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets></workbook>',
            "xl/_rels/workbook.xml.rels":
              '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>',
            "xl/styles.xml":
              '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="2"><xf/><xf numFmtId="14" applyNumberFormat="1"/></cellXfs></styleSheet>',
          },
        ),
      ),
      async (file) => {
        // ECMA-376 part 1, 18.17.4.1: day 1 is 2 January 1904 there, and 1463 where days count from 1900.
        expect(file.grid.value({ sheet: "Data", row: 0, column: 0 })).toBe(1463);
        expect(file.grid.value({ sheet: "Data", row: 0, column: 1 })).toBe(1904);
        await file.grid.type({ sheet: "Data", row: 0, column: 0 }, [[1464]]);
        const saved = await file.saved();
        expect(cellIn(saved, "Data", 0, 0)?.value).toBe(2);
        expect(cellIn(saved, "Data", 0, 1)).toMatchObject({ value: 1904, formula: "=YEAR(A1)" });
        expect(opened(saved).isUnsettled).toBe(true);
      },
    ));
});
