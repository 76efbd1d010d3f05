/** Rows of an opened file: as high as it says, and high enough for what was seen whole where it was made. */
import { describe, expect, it } from "vitest";
import { rowHeights } from "../../src/workbench/file/row-heights";
import { bookOf } from "../xlsx/files";
import { opened } from "./file";

const heading = { format: "General", wraps: true, bold: true } as const;
const pixels = 96;
const usual = 20;

/** The height of the first row, whose one cell holds a text in a column of 96 pixels. */
function heightOf(text: string, row: string, look: object = heading): number {
  const cell = `<c r="A1" t="inlineStr"><is><t xml:space="preserve">${text}</t></is></c>`;
  const [sheet] = opened(bookOf(`<row r="1" ${row}>${cell}</row>`)).sheets;
  if (!sheet) throw new Error("There is no sheet.");
  return rowHeights(sheet, [{ format: "General", ...look }], () => pixels, usual)[0] ?? usual;
}

// 11 points are 14.67 pixels, a line of them 17
const threeLines = 51;

describe("rows of an opened file", () => {
  it("are as high as a wrapped heading needs where the file does not say", () => {
    expect(heightOf("± ACID VALUE mg KOH/g", "")).toBeGreaterThanOrEqual(threeLines);
    expect(heightOf("Acid value mg KOH/g", "")).toBeLessThan(threeLines);
    expect(heightOf("Date", "")).toBeLessThanOrEqual(22);
  });

  it("show a heading whole whose lines were fewer where the file was made", () => {
    expect(heightOf("± ACID VALUE mg KOH/g", 'ht="30" customHeight="1"')).toBeGreaterThanOrEqual(
      threeLines,
    );
  });

  it("stay as low as somebody made them, where the text was cut off there too", () => {
    const long = "Oil that was heated, settled and drawn off the top before it was titrated";
    expect(heightOf(long, 'ht="15" customHeight="1"')).toBe(20);
    expect(heightOf(long, 'ht="15"')).toBeGreaterThan(4 * 17);
  });

  it("are as high as the file says where that is more", () => {
    // 60 points are 80 pixels
    expect(heightOf("Date", 'ht="60" customHeight="1"')).toBe(80);
    expect(heightOf("Date", 'ht="60"', {})).toBe(80);
    expect(heightOf("Date", 'ht="9" customHeight="1"', {})).toBe(12);
  });

  it("take no height from what is no height, and none above what a spreadsheet has", () => {
    expect(heightOf("Date", 'ht="tall" customHeight="1"', {})).toBe(usual);
    expect(heightOf("Date", 'ht="-4"', {})).toBe(usual);
    // 409.5 points are 546 pixels
    expect(heightOf("Date", 'ht="9999"', {})).toBe(546);
  });
});
