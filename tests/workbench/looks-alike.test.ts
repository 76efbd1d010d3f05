/**
 * The example stands on the page before its file is read. Once a row of it is deleted, the file is shown
 * instead; and undone, the file before. Neither may look otherwise than what stood there first.
 */
import "../../src/workbench/engine/node";
import type { IStyleData, IWorkbookData } from "@univerjs/core";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { cellName } from "../../src/sheet/cell-name";
import { textWidth } from "../../src/sheet/letters";
import { ownLogbook } from "../../src/workbook/own/own-logbook";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { fileSnapshot } from "../../src/workbench/file/file-snapshot";
import { FitRows } from "../../src/workbench/fit-rows";
import { snapshotOf } from "../../src/workbench/snapshot";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { root } from "../rules/sources-of";
import { opened } from "./file";

function ofFile(book: Parameters<typeof newXlsx>[0]): IWorkbookData {
  const bytes = newXlsx(book);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
  return fileSnapshot(opened(bytes), { unit: "file", name: book.name, frozenColumns: true });
}

const plain = JSON.stringify({ fs: 11, vt: 3 });

/** What it shows of each cell's look, each row's height, each column's width. */
function looksOf({ styles, sheets }: IWorkbookData): string[] {
  return Object.values(sheets).flatMap((sheet) => {
    const { name, cellData, rowData, columnData, defaultStyle, ...rest } = sheet;
    const styleOf = (given: unknown): string => {
      const style = (typeof given === "string" ? styles[given] : given) as IStyleData | undefined;
      const shown = { ...((style ?? defaultStyle) as object), look: undefined };
      const sorted = Object.entries(shown).sort(([a], [b]) => (a < b ? -1 : 1));
      return JSON.stringify(Object.fromEntries(sorted));
    };
    const cells = Object.entries(cellData ?? {}).flatMap(([row, each]) =>
      Object.entries(each).flatMap(([column, cell]) => {
        const { s, v, f } = cell as { s?: unknown; v?: unknown; f?: unknown };
        const style = styleOf(s);
        const isSeen = (v ?? "") !== "" || f !== undefined || style.includes('"bg"');
        return style === plain || !isSeen ? [] : [`${String(name)} R${row}C${column} ${style}`];
      }),
    );
    const heights = Object.entries(rowData ?? {}).map(
      ([row, each]) => `${String(name)} row ${row}: ${JSON.stringify(each)}`,
    );
    const widths = Object.entries(columnData ?? {}).map(
      ([column, each]) => `${String(name)} column ${column}: ${String((each as { w?: number }).w)}`,
    );
    const usual = `${styleOf(undefined)} ${String(rest.defaultColumnWidth)} ${String(rest.defaultRowHeight)}`;
    return [usual, ...cells, ...heights, ...widths].sort();
  });
}

/** What stands in a cell and does not fit: a sentence where it is not wrapped, the longest word where it is. */
function cutIn(name: string): string[] {
  const file = opened(readFileSync(join(root, "sample-workbooks", `${name}.xlsx`)));
  const { sheets } = fileSnapshot(file, { unit: "file", name, frozenColumns: true });
  return file.sheets.flatMap((sheet) => {
    const drawn = Object.values(sheets).find((each) => each.name === sheet.name);
    const there = new Map(sheet.cells.map((cell) => [cellName(cell.row, cell.column), cell]));
    return sheet.cells.flatMap(({ row, column, value, look: at }) => {
      const look = file.looks[at];
      const beside = there.get(cellName(row, column + 1));
      if (typeof value !== "string" || !look) return [];
      // a sentence runs on over what is empty beside it
      const isFree = (beside?.value ?? "") === "" && !file.looks[beside?.look ?? 0]?.fill;
      if (!look.wraps && isFree) return [];
      const bold = look.bold ?? false;
      const words = look.wraps ? value.split(/\s/) : [value];
      const wide = Math.max(...words.map((word) => textWidth(word, bold)));
      const pixels = (wide * (look.size ?? 11) * 96) / 72 + 9 * (look.indent ?? 0);
      const room = (drawn?.columnData?.[column]?.w ?? 0) - 5;
      return pixels <= room ? [] : [`${sheet.name}!${cellName(row, column)}: ${value}`];
    });
  });
}

describe("a workbook of ours", () => {
  it.each([
    ["the example", sampleLogbook()],
    ["a logbook that is begun", ownLogbook()],
  ])("looks the same without its file and with it: %s", (_which, book) => {
    const shown = looksOf(snapshotOf(book));
    expect(shown.length).toBeGreaterThan(100);
    expect(shown).toEqual(looksOf(ofFile(book)));
  });

  it.each(["logbook", "own-logbook"])("cuts no word, and no heading: %s", (name) => {
    expect(cutIn(name)).toEqual([]);
  });

  it("has one size of letters in all rows of its tables", () => {
    const file = opened(readFileSync(join(root, "sample-workbooks", "logbook.xlsx")));
    const sizes = file.sheets.flatMap(({ cells, tables }) =>
      cells
        .filter(({ row, column }) =>
          tables.some(
            ({ area }) =>
              row >= area.row &&
              row < area.row + area.rows &&
              column >= area.column &&
              column < area.column + area.columns,
          ),
        )
        .map(({ look }) => file.looks[look]?.size),
    );
    expect(sizes.length).toBeGreaterThan(500);
    expect(new Set(sizes)).toEqual(new Set([11]));
  });

  it("has rows as high as their worth takes, as in its file, where another text is worked out too", async () => {
    const { HeadlessWorkbook } = await import("../../src/workbench/engine/headless");
    const book = sampleLogbook();
    const bytes = readFileSync(join(root, "sample-workbooks", "logbook.xlsx"));
    const options = { unit: "file", name: book.name, frozenColumns: true };
    // programs that fit no row by themselves show it whole, and those that do fit it again
    const [said] = (
      opened(bytes).sheets.find(({ name }) => name === "Titrations")?.heights ?? []
    ).filter(({ row }) => row === 7);
    expect(said?.isSet).toBe(false);
    expect(said?.height).toBeGreaterThan(30);
    const grid = await HeadlessWorkbook.open(book);
    const drawn: string[] = [];
    const rows = new FitRows(grid.cells.names, (_unit, sheets) => drawn.push(...sheets));
    rows.fit();
    expect(drawn).toContain("Titrations");
    const heights = (sheet: string, count: number) => {
      const manager = grid.cells.names.sheet(sheet)?.getRowManager();
      return Array.from({ length: count }, (_, row) => manager?.getRowHeight(row));
    };
    for (const sheet of Object.values(fileSnapshot(opened(bytes), options).sheets)) {
      const { name = "", rowData = {}, defaultRowHeight } = sheet;
      const inFile = Array.from({ length: 40 }, (_, row) => rowData[row]?.h ?? defaultRowHeight);
      expect([name, heights(name, 40)]).toEqual([name, inFile]);
    }
    // the titre that stood apart agrees with the others now
    const at = { sheet: "Titrations", row: 7, column: 8 };
    const before = heights(at.sheet, 8)[at.row] ?? 0;
    await grid.type(at, [[5.2]]);
    rows.fit();
    expect(heights(at.sheet, 8)[at.row]).toBeLessThan(before);
    await grid.type(at, [[6.1]]);
    rows.fit();
    expect(heights(at.sheet, 8)[at.row]).toBe(before);
  });
});
