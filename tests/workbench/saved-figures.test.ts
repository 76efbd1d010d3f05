/** What a save does with figures that are none, cells that were emptied, times of day and looks. */
import { describe, expect, it } from "vitest";
import { CellValueType, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { tidy } from "../../src/workbench/grid/tidy";
import { readCellName } from "../../src/xlsx/cell-address";
import { isFileProblem, patchXlsx, sayFile } from "../../src/xlsx";
import { bookOf, partsWith, sheetOf, zipped } from "../xlsx/files";
import { type FileInGrid, inGrid, opened } from "./file";

const at = (address: string) => ({
  sheet: "Data",
  ...(readCellName(address) ?? { row: -1, column: -1 }),
});

function cellOf(bytes: Uint8Array, address: string) {
  const { row, column } = at(address);
  return opened(bytes).sheets[0]?.cells.find((each) => each.row === row && each.column === column);
}

/** As the page does: what is put into cells goes through its own mending first. */
function mending({ grid }: FileInGrid): void {
  grid.injector
    .get(ICommandService)
    .beforeCommandExecuted((command, options) => tidy(command, options, grid.cells));
}

const type = (file: FileInGrid, address: string, typed: string | number) =>
  file.grid.type(at(address), [[typed]]);

describe("what is no figure", () => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY])(
    "as a result (%d) is not written, and all else is",
    (none) =>
      inGrid(
        bookOf('<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f>A1*3</f><v>6</v></c></row>'),
        async (file) => {
          const { editsOf } = await import("../../src/workbench/file/edits-of");
          await type(file, "A1", 5);
          const now = file.now();
          const cells = now.sheets[0]?.cells.get(0);
          const result = cells?.get(1);
          if (!result) throw new Error("B1 is not there");
          const broken = new Map(cells).set(1, { ...result, value: none });
          const sheets = now.sheets.map((sheet) => ({ ...sheet, cells: new Map([[0, broken]]) }));
          const { edits, leftAsTheyWere } = editsOf(
            file.before,
            { ...now, sheets },
            { dates: 1900, arrays: new Map(), charactersOf: (pixels) => pixels / 8 },
          );
          const saved = patchXlsx(file.workbook, edits);
          if (isFileProblem(saved)) throw new Error(sayFile(saved));
          expect(cellOf(saved, "A1")?.value).toBe(5);
          expect(cellOf(saved, "B1")?.value).toBe(6);
          expect(leftAsTheyWere).toBe(1);
          expect(opened(saved).isUnsettled).toBe(true);
        },
      ),
  );

  it("typed into a cell does not refuse the save of all others", () =>
    inGrid(
      bookOf('<row r="1"><c r="A1"><v>2</v></c><c r="B1"><v>3</v></c></row>'),
      async (file) => {
        await type(file, "A1", Number.POSITIVE_INFINITY);
        await type(file, "B1", 4);
        const saved = await file.saved();
        expect(cellOf(saved, "A1")?.value).toEqual({ error: "#NUM!" });
        expect(cellOf(saved, "B1")?.value).toBe(4);
      },
    ));
});

describe("an empty text", () => {
  it("that is typed empties the cell, and whoever reads it reads 0", () =>
    inGrid(
      bookOf(
        '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f>A1+1</f><v>3</v></c><c r="C1"><f>COUNTA(A1)</f><v>1</v></c></row>',
      ),
      async (file) => {
        mending(file);
        await type(file, "A1", "");
        const saved = await file.saved();
        // By hand: 0 + 1, and nothing is there to be counted.
        expect(cellOf(saved, "A1")?.value ?? null).toBeNull();
        expect(cellOf(saved, "B1")?.value).toBe(1);
        expect(cellOf(saved, "C1")?.value).toBe(0);
      },
    ));

  it("that an apostrophe alone makes is nothing in the sheet and nothing in the file", () =>
    inGrid(
      bookOf(
        '<row r="1"><c r="A1"><v>2</v></c><c r="B1" t="b"><f>ISTEXT(A1)</f><v>0</v></c><c r="C1"><f>COUNTA(A1:A2)</f><v>1</v></c><c r="D1"><f>A1+1</f><v>3</v></c></row>',
      ),
      async (file) => {
        mending(file);
        const put = async (row: number) => {
          // as the grid has it when an apostrophe is typed and nothing behind it
          await file.grid.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
            unitId: file.grid.cells.names.unit,
            subUnitId: file.grid.cells.names.sheetId("Data"),
            range: { startRow: row, endRow: row, startColumn: 0, endColumn: 0 },
            value: { v: "", t: CellValueType.FORCE_STRING, f: null, si: null, p: null },
          });
          await file.grid.computed();
        };
        await put(0);
        await put(1);
        expect(file.grid.value(at("A1"))).toBeNull();
        const saved = await file.saved();
        expect(cellOf(saved, "A1")?.value ?? null).toBeNull();
        expect(cellOf(saved, "A2")?.value ?? null).toBeNull();
        // By hand: an empty cell is no text, is not counted, and is 0 to a sum.
        for (const [address, value] of [
          ["B1", false],
          ["C1", 0],
          ["D1", 1],
        ] as const) {
          expect(file.grid.value(at(address)), address).toBe(value);
          expect(cellOf(saved, address)?.value, address).toBe(value);
        }
      },
    ));
});

/** Cells in five looks: 0 plain, 1 a day, 2 a time of day, 3 a percentage, 4 money. */
const styled = (rows: string, workbook = ""): Uint8Array =>
  zipped(
    partsWith(sheetOf(rows), {
      "xl/workbook.xml": `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">${workbook}<sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets></workbook>`,
      "xl/_rels/workbook.xml.rels":
        '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>',
      "xl/styles.xml":
        '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="5"><xf/><xf numFmtId="14" applyNumberFormat="1"/><xf numFmtId="20" applyNumberFormat="1"/><xf numFmtId="9" applyNumberFormat="1"/><xf numFmtId="7" applyNumberFormat="1"/></cellXfs></styleSheet>',
    }),
  );

describe("0.375 in a workbook that counts its days from 1904", () => {
  it.each([
    ["no format", 0],
    ["a day", 1],
    ["a time of day", 2],
  ])("is 0.375 in the file too, in a cell that shows %s", (_, style) =>
    inGrid(
      styled(
        `<row r="1"><c r="A1" s="${style}"><v>0.25</v></c></row>`,
        '<workbookPr date1904="1"/>',
      ),
      async (file) => {
        await type(file, "A1", 0.375);
        expect(cellOf(await file.saved(), "A1")?.value).toBe(0.375);
      },
    ),
  );
});

describe("the look of cells that nobody touched", () => {
  const formulas = [
    "A1",
    "A2",
    "-A2",
    "(A2)",
    "A2+A2",
    "A1+1",
    "B1*2",
    "C1*A2",
    "D1+1",
    "DATE(2026,1,2)",
    "TIME(1,30,0)",
    "A2*5%",
    "A2/3",
    "IF(A2>1,A1,C1)",
    "SUM(C1:D1)",
    "MAX(A1:D1)",
    "ROUND(D1,1)",
    'VALUE("12:00")',
    "INDEX(A1:D1,1,4)",
    "A2&A1",
    "TRUE",
    "EDATE(A1,1)",
  ];
  it("stays as it is in the file, whatever their formulas come to", () =>
    inGrid(
      styled(
        `<row r="1"><c r="A1" s="1"><v>46000</v></c><c r="B1" s="2"><v>0.25</v></c><c r="C1" s="3"><v>0.5</v></c><c r="D1" s="4"><v>12</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>${formulas
          .map(
            (formula, row) =>
              `<row r="${row + 3}"><c r="A${row + 3}"><f>${formula.replaceAll("&", "&amp;").replaceAll(">", "&gt;")}</f></c></row>`,
          )
          .join("")}`,
      ),
      async (file) => {
        mending(file);
        for (const [address, typed] of [
          ["A1", 46_001],
          ["B1", 0.5],
          ["C1", 0.75],
          ["D1", 13],
          ["A2", 0],
        ] as const) {
          await type(file, address, typed);
        }
        // as the grid has it when 5% is typed into a cell without a format
        await file.grid.injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
          unitId: file.grid.cells.names.unit,
          subUnitId: file.grid.cells.names.sheetId("Data"),
          range: { startRow: 1, endRow: 1, startColumn: 0, endColumn: 0 },
          value: { v: 0.05, s: { n: { pattern: "0%" } } },
        });
        await file.grid.computed();
        const { edits, looksLost } = await file.edits();
        expect(looksLost).toBe(0);
        const dressed = edits.filter(
          (edit) => edit.do === "set-cell" && (edit.format !== undefined || edit.look),
        );
        expect(dressed).toMatchObject([{ row: 1, column: 0, format: "0%" }]);
        const saved = opened(await file.saved());
        const formulaCells = saved.sheets[0]?.cells.filter(({ row }) => row > 1) ?? [];
        expect(formulaCells).toHaveLength(formulas.length);
        expect(formulaCells.filter(({ look }) => (look ?? 0) !== 0)).toEqual([]);
      },
    ));
});

describe("a result on which programs do not agree", () => {
  it("takes the figure of before out of the file: a dose that no longer holds is worse than none", () =>
    inGrid(
      bookOf(
        '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><v>8</v></c><c r="C1"><f>VLOOKUP(2,A1:B1,2,FALSE)</f><v>8</v></c></row>',
      ),
      async (file) => {
        await file.grid.type(at("B1"), [[null]]);
        const { leftAsTheyWere } = await file.edits();
        const saved = await file.saved();
        expect(cellOf(saved, "C1")?.formula).toBe("=VLOOKUP(2,A1:B1,2,FALSE)");
        expect(cellOf(saved, "C1")?.value ?? "").toBe("");
        expect(leftAsTheyWere).toBe(1);
        expect(opened(saved).isUnsettled).toBe(true);
      },
    ));
});
