/** What the pane writes is saved too, in a file and in the sample; and what the file must keep is refused. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ICommandService, type IRange } from "@univerjs/core";
import { RemoveSheetCommand, SetWorksheetNameCommand } from "@univerjs/sheets";
import { describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import type { Step } from "../../src/sheet/port";
import { openHeadless } from "../../src/workbench/engine/node";
import type { Book } from "../../src/sheet/book";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { isFileProblem, openXlsx, patchXlsx, sayFile, type StructuralAct } from "../../src/xlsx";
import { partsWith, sheetOf, zipped } from "../xlsx/files";
import { type FileInGrid, fixture, inGrid, opened } from "./file";

const block = (sheet: string, row: number, column: number, rows: number, columns: number) => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

const value = (given: string | number) => ({ kind: "value", value: given }) as const;

/** A new sheet with a table of two columns, one worked out, as the pane makes its own. */
const newTable: Step[] = [
  { do: "add-sheet", name: "Weir" },
  {
    do: "set-cells",
    block: block("Weir", 0, 0, 3, 2),
    contents: [
      [
        { ...value("Titre mL"), style: "heading" },
        { ...value("Twice"), style: "heading" },
      ],
      [
        { ...value(2.5), style: "input", format: "0.00" },
        { kind: "formula", formula: "=Weirs[[#This Row],[Titre mL]]*2", style: "calculated" },
      ],
      [
        { ...value(3.5), style: "input", format: "0.00" },
        { kind: "formula", formula: "=Weirs[[#This Row],[Titre mL]]*2", style: "calculated" },
      ],
    ],
  },
  { do: "add-table", name: "Weirs", block: block("Weir", 0, 0, 3, 2) },
  { do: "set-width", sheet: "Weir", column: 0, characters: 20 },
  { do: "freeze-rows", sheet: "Weir", rows: 1 },
  { do: "add-note", block: block("Weir", 0, 0, 1, 1), text: "What the burette says" },
  { do: "offer-words", block: block("Weir", 1, 3, 2, 1), words: ["dried", "as received"] },
];

async function write(file: Pick<FileInGrid, "grid">, steps: readonly Step[]): Promise<void> {
  const { WorkbenchHost } = await import("../../src/host/workbench");
  expect(await new WorkbenchHost(file.grid.injector).write("Test", steps)).toBeUndefined();
}

describe("what the pane writes", () => {
  it("is saved: a sheet, a table with its column's formula, looks, a width, frozen rows, a note and words", () =>
    inGrid(fixture("charts"), async (file) => {
      await write(file, newTable);
      const saved = opened(await file.saved());
      const sheet = saved.sheets.find(({ name }) => name === "Weir");
      expect(sheet?.tables).toMatchObject([
        {
          name: "Weirs",
          area: { row: 0, column: 0, rows: 3, columns: 2 },
          columns: [
            { heading: "Titre mL" },
            { heading: "Twice", formula: "=Weirs[[#This Row],[Titre mL]]*2" },
          ],
        },
      ]);
      const at = (row: number, column: number) =>
        sheet?.cells.find((cell) => cell.row === row && cell.column === column);
      expect(at(2, 1)?.value).toBe(7);
      expect(saved.looks[at(1, 0)?.look ?? 0]).toMatchObject({ format: "0.00", fill: "#fffaea" });
      expect(saved.looks[at(0, 0)?.look ?? 0]).toMatchObject({ bold: true });
      expect(sheet?.frozenRows).toBe(1);
      expect(sheet?.notes).toEqual([{ row: 0, column: 0, text: "What the burette says" }]);
      expect(sheet?.widths[0]?.width).toBe(20);
      expect(saved.kept).toContainEqual({ what: "validations", sheet: "Weir", count: 1 });
      expect(saved.kept).toContainEqual({ what: "charts", sheet: "Log book", count: 2 });
    }));

  it("is saved in a table of the file that grows by a row, with the look of the row above", () =>
    inGrid(fixture("tidy"), async (file) => {
      const table = file.workbook.sheets[0]?.tables[0];
      const sheet = file.workbook.sheets[0]?.name ?? "";
      if (!table) throw new Error("no table");
      const { row, column, rows, columns } = table.area;
      await write(file, [
        {
          do: "set-cells",
          block: block(sheet, row + rows, column, 1, 2),
          contents: [[value("NQ-50"), value(1.5)]],
        },
        { do: "grow-table", name: table.name, block: block(sheet, row, column, rows + 1, columns) },
      ]);
      const saved = opened(await file.saved()).sheets[0];
      expect(saved?.tables[0]?.area.rows).toBe(rows + 1);
      const cell = (at: number, across: number) =>
        saved?.cells.find((each) => each.row === at && each.column === across);
      expect(cell(row + rows, column + 1)?.value).toBe(1.5);
      expect(cell(row + rows, column + 1)?.look).toBe(cell(row + rows - 1, column + 1)?.look);
    }));
});

describe("the sample", () => {
  it("shows what its own file holds, errors and answers over many cells too, and takes edits", async () => {
    const book: Book = sampleLogbook();
    const grid = await openHeadless(book);
    const { gridState } = await import("../../src/workbench/file/grid-state");
    const { editsOf } = await import("../../src/workbench/file/edits-of");
    const { arraysOf } = await import("../../src/workbench/file/opened-file");
    const before = gridState(grid.injector, grid.cells);
    const bytes = new Uint8Array(readFileSync(join(root, "sample-workbooks/logbook.xlsx")));
    const file = opened(bytes);
    for (const sheet of file.sheets) {
      for (const { row, column, formula, value: held } of sheet.cells) {
        if (formula === undefined) continue;
        const shown = grid.value({ sheet: sheet.name, row, column });
        const expected =
          typeof shown === "object" && shown !== null ? { error: shown.basicValue } : shown;
        expect(held ?? null).toEqual(expected);
      }
    }
    const terms = { dates: 1900, arrays: arraysOf(file), charactersOf: (pixels: number) => pixels };
    const edits = () => editsOf(before, gridState(grid.injector, grid.cells), terms as never).edits;
    expect(edits()).toEqual([]);
    const titrations = book.sheets.findIndex(({ name }) => name === "Titrations");
    const headings = book.sheets[titrations]?.rows.find((row) =>
      row.some((cell) => cell?.value === "Titre 1 mL"),
    );
    const column = headings?.findIndex((cell) => cell?.value === "Titre 1 mL") ?? 0;
    const row = (book.sheets[titrations]?.tables[0]?.row ?? 0) + 1;
    await grid.type({ sheet: "Titrations", row, column }, [[2.6]]);
    const patched = patchXlsx(bytes, edits());
    const again = isFileProblem(patched) ? patched : openXlsx(patched);
    if (isFileProblem(again)) throw new Error(sayFile(again));
    const corrected = headings?.findIndex((cell) => cell?.value === "Corrected titre mL") ?? 0;
    const cell = again.sheets[titrations]?.cells.find(
      (each) => each.row === row && each.column === corrected,
    );
    // By hand: the mean of 2.60, 2.50 and 2.45 less the blank of 0.15.
    expect(cell?.value).toBeCloseTo((2.6 + 2.5 + 2.45) / 3 - 0.15, 12);
    grid.close();
  });
});

describe("what a file could not be told", () => {
  async function guarded(
    file: FileInGrid,
    test: (
      said: string[],
      run: (id: string, params: object) => Promise<boolean>,
      acts: StructuralAct[],
    ) => Promise<void>,
  ): Promise<void> {
    const { Guard } = await import("../../src/workbench/grid/guard");
    const { factsOf, fileRules, fixedBy } = await import("../../src/workbench/grid/fixed");
    const said: string[] = [];
    const { injector, cells } = file.grid;
    const guard = new Guard(injector, cells, (sentence) => said.push(sentence));
    guard.fixed = fixedBy(file.before, factsOf(file.workbook), fileRules(file.workbook));
    const acts: StructuralAct[] = [];
    guard.acts = (act) => acts.push(act);
    const run = (id: string, params: object): Promise<boolean> =>
      injector.get(ICommandService).executeCommand(id, params);
    await test(said, run, acts);
  }

  it("is done in the file where it is about rows, columns or sheets, and not by the grid", () =>
    inGrid(fixture("tidy"), (file) =>
      guarded(file, async (said, run, acts) => {
        const sheet = file.workbook.sheets[0]?.name ?? "";
        const on = {
          unitId: file.grid.cells.names.unit,
          subUnitId: file.grid.cells.names.sheetId(sheet),
        };
        const range: IRange = { startRow: 4, endRow: 5, startColumn: 2, endColumn: 2 };
        const asked = [
          ["insert-row", { ...on, range }],
          ["insert-col", { ...on, range }],
          ["remove-row", { range }],
          ["remove-col", { range }],
          ["set-worksheet-name", { ...on, name: "Other" }],
          ["set-worksheet-order", { ...on, order: 1 }],
          ["remove-sheet", on],
        ] as const;
        for (const [id, params] of asked) {
          expect(await run(`sheet.command.${id}`, params), id).toBe(false);
        }
        expect(acts).toEqual([
          { do: "insert-rows", sheet, before: 4, count: 2 },
          { do: "insert-columns", sheet, before: 2, count: 1 },
          { do: "delete-rows", sheet, first: 4, count: 2 },
          { do: "delete-columns", sheet, first: 2, count: 1 },
          { do: "rename-sheet", sheet, name: "Other" },
          { do: "move-sheet", sheet, to: 1 },
          { do: "delete-sheet", sheet },
        ]);
        expect(said).toEqual([]);
        expect((await file.edits()).edits).toEqual([]);
      }),
    ));

  it("is refused before it is done: rows and columns that are dragged, headings", () =>
    inGrid(fixture("tidy"), (file) =>
      guarded(file, async (said, run, acts) => {
        const sheet = file.workbook.sheets[0]?.name ?? "";
        expect(await run("sheet.command.move-cols", {})).toBe(false);
        expect(await run("sheet.command.move-rows", {})).toBe(false);
        expect(said.map((sentence) => sentence.split(" ").slice(0, 2).join(" "))).toEqual([
          "Single cells",
          "Single cells",
        ]);
        for (const sentence of said) expect(sentence.length).toBeLessThanOrEqual(200);
        await file.grid.type({ sheet, row: 0, column: 0 }, [["Other heading"]]);
        expect(said.at(-1)).toContain("Headings of the table");
        expect(acts).toEqual([]);
        expect((await file.edits()).edits).toEqual([]);
      }),
    ));

  it("is refused on a protected sheet, but for the cells left open there", () => {
    const styles =
      '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="2"><xf/><xf applyProtection="1"><protection locked="0"/></xf></cellXfs></styleSheet>';
    const relations =
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>';
    const rows = '<row r="1"><c r="A1"><v>1</v></c><c r="B1" s="1"><v>2</v></c></row>';
    const bytes = zipped(
      partsWith(sheetOf(rows, '<sheetProtection sheet="1"/>'), {
        "xl/_rels/workbook.xml.rels": relations,
        "xl/styles.xml": styles,
      }),
    );
    return inGrid(bytes, (file) =>
      guarded(file, async (said) => {
        await file.grid.type({ sheet: "Data", row: 0, column: 0 }, [[5]]);
        expect(said).toEqual(["The sheet Data is protected: its cells take no changes."]);
        await file.grid.type({ sheet: "Data", row: 0, column: 1 }, [[6]]);
        expect(said.length).toBe(1);
        const { edits } = await file.edits();
        expect(edits).toMatchObject([{ row: 0, column: 1, content: { value: 6 } }]);
      }),
    );
  });

  it("lets a sheet be named and deleted that the file does not have yet", () =>
    inGrid(fixture("tidy"), (file) =>
      guarded(file, async (said, run) => {
        await write(file, [{ do: "add-sheet", name: "Weir" }]);
        const on = {
          unitId: file.grid.cells.names.unit,
          subUnitId: file.grid.cells.names.sheetId("Weir"),
        };
        expect(await run(SetWorksheetNameCommand.id, { ...on, name: "Quay" })).toBe(true);
        expect(opened(await file.saved()).sheets.at(-1)?.name).toBe("Quay");
        expect(await run(RemoveSheetCommand.id, on)).toBe(true);
        expect((await file.edits()).edits).toEqual([]);
        expect(said).toEqual([]);
      }),
    ));
});
