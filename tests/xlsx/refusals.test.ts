import { zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { type FileProblem, isFileProblem, openXlsx, patchXlsx, sayFile } from "../../src/xlsx";
import { limits } from "../../src/xlsx/limits";
import { answer } from "../../src/xlsx/problem";
import { CellReader } from "../../src/xlsx/read/cells";
import { scanSheet } from "../../src/xlsx/read/sheet-scan";
import { codeOf, set } from "./answers";
import { bookOf, made, main, partsOf, partsWith, sheetOf, zipped } from "./files";

const text = new TextEncoder();
const compound = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const utf16 = (word: string) => [...word].flatMap((letter) => [letter.charCodeAt(0), 0]);
const parts = () => partsWith(sheetOf(""));
const replaced = (name: string, from: string | RegExp, to: string) =>
  zipped({ ...parts(), [name]: (parts()[name] ?? "").replace(from, to) });

/** A file with the name of one entry written over by another of the same length. */
function renamed(bytes: Uint8Array, from: string, to: string): Uint8Array {
  const copy = bytes.slice();
  const wanted = text.encode(from);
  for (let at = 0; at + wanted.length <= copy.length; at++) {
    if (wanted.every((byte, index) => copy[at + index] === byte)) copy.set(text.encode(to), at);
  }
  return copy;
}

/** A file whose entries say they are locked. */
function locked(bytes: Uint8Array): Uint8Array {
  const copy = bytes.slice();
  for (let at = 0; at + 10 < copy.length; at++) {
    if (copy[at] === 0x50 && copy[at + 1] === 0x4b && copy[at + 2] === 1) {
      copy[at + 8] = (copy[at + 8] ?? 0) | 1;
    }
  }
  return copy;
}

const deep = `${"<a>".repeat(5000)}${"</a>".repeat(5000)}`;
const spaces = (count: number) => " ".repeat(count);

/** Rows of empty cells, of styles that make them shrink no more than those of a real sheet. */
const rowsOfCells = (rows: number, columns: number) =>
  Array.from({ length: rows }, (_, row) => {
    const cells = Array.from(
      { length: columns },
      (__, column) => `<c s="${String((row * 7919 + column * 104_729) % 1009)}"/>`,
    );
    return `<row>${cells.join("")}</row>`;
  }).join("");

describe("a file that is no workbook for us is refused with a sentence", () => {
  const cases: [string, () => Uint8Array, string][] = [
    ["nothing", () => new Uint8Array(), "not-a-workbook"],
    ["text", () => text.encode("Lot,Titre\nPier,2.35\n"), "not-a-workbook"],
    ["two letters", () => text.encode("PK"), "not-a-workbook"],
    ["an old .xls", () => new Uint8Array([...compound, ...utf16("Workbook")]), "old-format"],
    [
      "a locked .xlsx",
      () => new Uint8Array([...compound, ...utf16("EncryptedPackage")]),
      "encrypted",
    ],
    ["a locked zip", () => locked(made("tidy")), "encrypted"],
    [
      "a .xlsb",
      () =>
        replaced(
          "[Content_Types].xml",
          "spreadsheetml.sheet.main+xml",
          "x.sheet.binary.macroEnabled.main",
        ),
      "binary-format",
    ],
    [
      "a strict workbook",
      () =>
        replaced(
          "_rels/.rels",
          "http://schemas.openxmlformats.org/officeDocument/2006/",
          "http://purl.oclc.org/ooxml/officeDocument/",
        ),
      "strict-format",
    ],
    [
      "a strict part",
      () => replaced("xl/workbook.xml", main, "http://purl.oclc.org/ooxml/spreadsheetml/main"),
      "strict-format",
    ],
    [
      "a text document",
      () => replaced("[Content_Types].xml", "spreadsheetml.sheet", "wordprocessingml.document"),
      "other-format",
    ],
    [
      "an OpenDocument file",
      () =>
        zipSync({
          mimetype: text.encode("application/vnd.oasis.opendocument.spreadsheet"),
          "[Content_Types].xml": text.encode("<Types/>"),
        }),
      "other-format",
    ],
    ["any zip", () => zipSync({ "a.txt": text.encode("a") }), "not-a-workbook"],
    ["a file cut off", () => made("tidy").slice(0, -30), "not-a-workbook"],
    [
      "a missing sheet",
      () =>
        zipped(
          Object.fromEntries(Object.entries(parts()).filter(([name]) => !name.includes("sheet1"))),
        ),
      "damaged",
    ],
    ["broken XML", () => replaced("xl/workbook.xml", "</sheets>", "</sheet>"), "damaged"],
    [
      "a part that is not UTF-8",
      () =>
        zipSync({
          ...Object.fromEntries(
            Object.entries(parts()).map(([name, part]) => [name, text.encode(part)]),
          ),
          "xl/workbook.xml": new Uint8Array([0x3c, 0xff, 0x3e]),
        }),
      "damaged",
    ],
    [
      "another encoding",
      () =>
        replaced(
          "xl/workbook.xml",
          "<workbook",
          '<?xml version="1.0" encoding="ISO-8859-1"?><workbook',
        ),
      "other-encoding",
    ],
    [
      "a document type",
      () =>
        replaced("xl/workbook.xml", "<workbook", '<!DOCTYPE workbook [<!ENTITY a "b">]><workbook'),
      "declares-entities",
    ],
    [
      "an outside entity",
      () => bookOf('<row r="1"><c r="A1" t="str"><v>&secret;</v></c></row>'),
      "damaged",
    ],
    ["elements without end", () => bookOf("", deep), "damaged"],
    ["a cell outside any sheet", () => bookOf('<row r="1"><c r="ZZZ1"/></row>'), "damaged"],
    ["a cell in another's row", () => bookOf('<row r="1"><c r="A2"/></row>'), "damaged"],
    ["a row without number", () => bookOf('<row r="0"/>'), "damaged"],
    ["a row number without end", () => bookOf('<row r="99999999999999"/>'), "damaged"],
    [
      "a wrong checksum",
      () => {
        const copy = bookOf("").slice();
        copy.fill(0x41, 60, 64);
        return copy;
      },
      "damaged",
    ],
    [
      "a name that leads out",
      () => zipSync({ "xl/../../evil.xml": text.encode("<a/>") }),
      "unsafe-name",
    ],
    [
      "a name from the root",
      () => zipSync({ "/etc/evil.xml": text.encode("<a/>") }),
      "unsafe-name",
    ],
    ["a name with a drive", () => zipSync({ "c:evil.xml": text.encode("<a/>") }), "unsafe-name"],
    [
      "one name twice",
      () =>
        renamed(
          zipped({ ...parts(), "xl/a.xml": "<a/>", "xl/b.xml": "<a/>" }),
          "xl/b.xml",
          "xl/A.xml",
        ),
      "repeated-name",
    ],
    [
      "a part packed to harm",
      () => zipped({ ...parts(), "xl/media.xml": spaces(3_000_000) }),
      "packed-to-harm",
    ],
  ];

  it.each(cases)("%s", (_, file, code) => {
    const bytes = file();
    const found = openXlsx(bytes);
    expect(codeOf(found)).toBe(code);
    expect(codeOf(patchXlsx(bytes, [set("A1", 1)]))).toBe(code);
    const sentence = isFileProblem(found) ? sayFile(found) : "";
    expect(sentence).toMatch(/^[A-Z].*\.$/s);
    expect(sentence.length).toBeLessThanOrEqual(200);
  });

  it("more than 100 MB unpacked, whatever the packed size", () => {
    const bytes = made("tidy").slice();
    // The size each entry says it has, in the directory: APPNOTE 4.3.12.
    const view = new DataView(bytes.buffer);
    for (let at = 0; at + 46 < bytes.length; at++) {
      if (view.getUint32(at, true) !== 0x02014b50) continue;
      view.setUint32(at + 20, 10_000_000, true);
      view.setUint32(at + 24, limits.unpackedBytes / 4, true);
    }
    expect(codeOf(openXlsx(bytes))).toBe("too-large");
  });

  it("more than a million cells", () => {
    expect(codeOf(openXlsx(bookOf(rowsOfCells(62, 16_384))))).toBe("too-many-cells");
  }, 30_000);

  it("a formula shared by more cells than memory could hold", () => {
    const shared =
      '<c r="A1"><f t="shared" ref="A1:A9" si="0">A1+1</f></c><c><f t="shared" si="0"/></c>';
    const reader = new CellReader({
      part: "sheet",
      strings: { texts: [], rich: new Set() },
      dynamicMarks: new Set(),
      dates: 1900,
      budget: { cells: 9, sharedText: 3 },
    });
    const sheet = sheetOf(`<row r="1">${shared}</row>`);
    const read = () => scanSheet("sheet", sheet, reader);
    expect(codeOf(answer(read) as FileProblem)).toBe("too-large");
  });

  it("no formula that takes its time, though it stands in many cells", () => {
    const cells = `<c><f>_xl${"'".repeat(8000)}</f></c>`.repeat(200);
    const found = openXlsx(zipped(partsWith(sheetOf(`<row r="1">${cells}</row>`)), 0));
    expect(isFileProblem(found) || found.sheets[0]?.cells.length).toBe(200);
  });

  it("a part that unpacks to more than it says, at once", () => {
    const bytes = zipped({ ...parts(), "xl/worksheets/sheet1.xml": sheetOf("", spaces(900_000)) });
    const view = new DataView(bytes.buffer);
    for (let at = 0; at + 46 < bytes.length; at++) {
      if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 24, true) > 900_000) {
        view.setUint32(at + 24, 1000, true);
      }
    }
    expect(codeOf(openXlsx(bytes))).toBe("packed-to-harm");
  });

  it("but not one that only repeats itself", () => {
    const rows = Array.from(
      { length: 3000 },
      (_, index) => `<row r="${index + 1}"><c s="1"/></row>`,
    );
    expect(isFileProblem(openXlsx(bookOf(rows.join(""))))).toBe(false);
  });

  it("and a workbook with macros is none of them", () => {
    const types = (partsOf(made("tidy"))["[Content_Types].xml"] ?? "").replace(
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
      "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
    );
    const bytes = zipped({
      ...partsOf(made("tidy")),
      "[Content_Types].xml": types,
      "xl/vbaProject.bin": "x",
    });
    const found = openXlsx(bytes);
    expect(isFileProblem(found) ? sayFile(found) : found.kept).toContainEqual({
      what: "macros",
      count: 1,
    });
  });
});
