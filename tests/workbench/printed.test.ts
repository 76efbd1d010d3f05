/** A sheet as it is printed: what of it, how wide, and what stands on each page. */
import { WrapStrategy } from "@univerjs/core";
import { describe, expect, it } from "vitest";
import { printedSheet, type PrintSource } from "../../src/workbench/printing/printed";
import { carriedOfFile, printAsked, printOf } from "../../src/workbench/printing/sheet-print";
import { partsWith, sheetOf, zipped } from "../xlsx/files";
import { opened } from "./file";

const source = (more: Partial<PrintSource> = {}): PrintSource => ({
  name: "Data",
  extent: { row: 0, column: 0, rows: 6, columns: 4 },
  frozenRows: 0,
  frozenColumns: 0,
  merged: [],
  width: () => 100,
  height: () => 20,
  showsRow: () => true,
  showsColumn: () => true,
  cell: (row, column) => ({
    text: `${String(row)}.${String(column)}`,
    isFigure: false,
    style: { tb: WrapStrategy.WRAP },
  }),
  ...more,
});

const texts = (rows: readonly { readonly cells: readonly { readonly text: string }[] }[]) =>
  rows.map(({ cells }) => cells.map(({ text }) => text).join(" "));

describe("a sheet on paper", () => {
  it("has its repeated rows apart, and what stands above them before, once", () => {
    const { parts } = printedSheet(source(), { repeatRows: { row: 2, rows: 1 } });
    expect(parts.length).toBe(1);
    expect(texts(parts[0]?.before ?? [])).toEqual(["0.0 0.1 0.2 0.3", "1.0 1.1 1.2 1.3"]);
    expect(texts(parts[0]?.above ?? [])).toEqual(["2.0 2.1 2.2 2.3"]);
    expect(parts[0]?.rows.length).toBe(3);
  });

  it("is its print area, without hidden rows and columns, and no more of it than is filled", () => {
    const area = { row: 1, column: 1, rows: 1000, columns: 1000 };
    const shown = source({ showsRow: (row) => row !== 3, showsColumn: (column) => column !== 2 });
    expect(texts(printedSheet(shown, { area }).parts[0]?.rows ?? [])).toEqual([
      "1.1 1.3",
      "2.1 2.3",
      "4.1 4.3",
      "5.1 5.3",
    ]);
  });

  it("lies where the file says so or it is wide, and is made as small as the page, no smaller than is read", () => {
    expect(printedSheet(source(), {})).toMatchObject({ isLandscape: false, scale: 1 });
    // 900 pixels are more than the 718 of an upright page
    const wide = printedSheet(source({ width: () => 225 }), {});
    expect(wide).toMatchObject({ isLandscape: true, scale: 1 });
    expect(printedSheet(source({ width: () => 225 }), { isLandscape: false }).scale).toBeCloseTo(
      718 / 900,
      9,
    );
    const beside = printedSheet(source({ width: () => 700, frozenColumns: 1 }), {});
    // 1046 / 0.6 are 1743 pixels: two of 700, the frozen one in each
    expect(beside.parts.map(({ rows }) => texts(rows)[0])).toEqual([
      "0.0 0.1",
      "0.0 0.2",
      "0.0 0.3",
    ]);
    expect(beside.scale).toBeGreaterThan(0.6);
  });

  it("lets a text run on over empty cells, and stop at one that is filled", () => {
    const row = ["A sentence that is far longer than a cell", "", "full", ""];
    const cell = (_: number, column: number) => ({
      text: row[column] ?? "",
      isFigure: false,
      style: undefined,
    });
    const { parts } = printedSheet(source({ cell }), {});
    expect(parts[0]?.rows[0]?.cells.map(({ columns }) => columns)).toEqual([2, 1, 1]);
  });

  it("keeps merged cells merged", () => {
    const merged = [{ row: 1, column: 0, rows: 2, columns: 2 }];
    const [, first, second] = printedSheet(source({ merged }), {}).parts[0]?.rows ?? [];
    expect(first?.cells[0]).toMatchObject({ text: "1.0", columns: 2, rows: 2 });
    expect([first?.cells.length, second?.cells.length]).toEqual([3, 2]);
  });

  it("goes by the area, the titles and the paper that its file names", () => {
    const parts = partsWith(sheetOf("", `<pageSetup orientation="landscape"/>`));
    const names = `<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Data!$A$1:$C$9</definedName><definedName name="_xlnm.Print_Titles" localSheetId="0">Data!$A:$B,Data!$2:$3</definedName></definedNames>`;
    const bytes = zipped({
      ...parts,
      "xl/workbook.xml": (parts["xl/workbook.xml"] ?? "").replace(
        "</workbook>",
        `${names}</workbook>`,
      ),
    });
    expect(printOf(carriedOfFile(opened(bytes)), "Data")).toMatchObject({
      isLandscape: true,
      area: { row: 0, column: 0, rows: 9, columns: 3 },
      repeatRows: { row: 1, rows: 2 },
    });
  });
});

describe("a sheet that says where its second page begins", () => {
  // 60 rows of 11 pt letters: 60 x (11 x 96/72 x 1.15 + 3) = 1192 pixels, more than the 1046 of a page
  const tall = (rows: number) =>
    source({ extent: { row: 0, column: 0, rows: rows + 10, columns: 4 }, height: () => 24 });

  it("has all that stands before it on one page, made as small as that takes, and the rest on another", () => {
    const { parts } = printedSheet(tall(60), { secondPage: 60 });
    expect(parts.map(({ rows }) => rows.length)).toEqual([60, 10]);
    const [card] = parts;
    const height = (card?.rows ?? []).reduce((sum, row) => sum + row.height, 0);
    expect(height).toBeCloseTo(1192, 0);
    expect(height * (card?.scale ?? 1)).toBeLessThan(1046);
    expect(parts[1]?.scale).toBe(1);
  });

  it("is not made too small to be read: what is longer goes on over more pages", () => {
    expect(printedSheet(tall(200), { secondPage: 200 }).parts[0]?.scale).toBe(1);
  });

  it("is printed so while the pane's wish stands in its first cell alone", () => {
    expect(printAsked({ rows: 70, columns: 5, landscape: false, secondPage: 60 })).toEqual({
      area: { row: 0, column: 0, rows: 70, columns: 5 },
      isLandscape: false,
      secondPage: 60,
    });
    expect(printAsked(undefined)).toEqual({});
  });
});
