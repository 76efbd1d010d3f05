/** Workbook files for the tests: those that other programs made, and small ones put together by hand. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { root } from "../rules/sources-of";

/** Made by tests/second-opinion/xlsx/make.py. */
export const made = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(root, "tests/second-opinion/xlsx", `${name}.xlsx`)));

export const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packaged = "http://schemas.openxmlformats.org/package/2006";
const sheetType = "application/vnd.openxmlformats-officedocument.spreadsheetml";

export type Parts = Record<string, string>;

/** The text of every part, by zip's own reader and not ours. */
export const partsOf = (bytes: Uint8Array): Parts =>
  Object.fromEntries(
    Object.entries(unzipSync(bytes)).map(([name, content]) => [name, strFromU8(content)]),
  );

/** `level` 0 stores the parts unpacked, which is quicker. */
export const zipped = (parts: Parts, level: 0 | 6 = 6): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])), {
    mtime: "2026-05-04T08:00:00",
    level,
  });

/** A sheet of the given rows, as a file writes them. */
export const sheetOf = (rows: string, after = "", before = ""): string =>
  `<worksheet xmlns="${main}" xmlns:r="${office}">${before}<sheetData>${rows}</sheetData>${after}</worksheet>`;

/** The parts of a workbook with one sheet, "Data". */
export function partsWith(sheet: string, more: Parts = {}): Parts {
  return {
    "[Content_Types].xml": `<Types xmlns="${packaged}/content-types"><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${sheetType}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${sheetType}.worksheet+xml"/></Types>`,
    "_rels/.rels": `<Relationships xmlns="${packaged}/relationships"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Data" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${packaged}/relationships"><Relationship Id="rId1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml": sheet,
    ...more,
  };
}

/** A workbook with one sheet, "Data", of the given rows. */
export const bookOf = (rows: string, after = "", before = ""): Uint8Array =>
  zipped(partsWith(sheetOf(rows, after, before)));
