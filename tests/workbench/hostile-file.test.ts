/**
 * A workbook that a stranger mailed, in the embedded spreadsheet: what is made to harm shows an error,
 * all else is worked out, and the file stays as it is, byte for byte.
 */
import { describe, expect, it } from "vitest";
import { namesOfObjects } from "../security/names-as-keys";
import { partsWith, sheetOf, zipped } from "../xlsx/files";
import { fixture, inGrid, opened } from "./file";

const nameOf = (name: string, text: string) => `<definedName name="${name}">${text}</definedName>`;

/** A1 and B1 of the given formulas, C1 of a plain one, D1 of a call of ours; A2 holds 2.5. */
function bookWith(formulas: readonly string[], names = "", sheet = "Data"): Uint8Array {
  const plain = ["A2*2", "_xldudf_TITRE_CORRECTED(A2)"];
  const cells = [...formulas, ...plain].map(
    (formula, at) => `<c r="${"ABCD"[at + 2 - formulas.length] ?? ""}1"><f>${formula}</f></c>`,
  );
  const rows = `<row r="1">${cells.join("")}</row><row r="2"><c r="A2"><v>2.5</v></c></row>`;
  const parts = partsWith(sheetOf(rows));
  const listed = (parts["xl/workbook.xml"] ?? "")
    .replace('"Data"', `"${sheet}"`)
    .replace("</sheets>", `</sheets><definedNames>${names}</definedNames>`);
  return zipped({ ...parts, "xl/workbook.xml": listed });
}

/** What the first row shows; the file as saved is the file as opened. */
async function shown(bytes: Uint8Array): Promise<Record<string, unknown>> {
  const found: Record<string, unknown> = {};
  await inGrid(bytes, async (file) => {
    for (const [column, { value }] of file.now().sheets[0]?.cells.get(0) ?? []) {
      const isError = typeof value === "object" && value !== null;
      found["ABCD"[column] ?? ""] = isError ? value.basicValue : value;
    }
    expect(await file.saved()).toEqual(bytes);
  });
  return found;
}

const sound = { C: 5, D: 2.5 };

describe("a sheet called by a word of the language", () => {
  it.each(namesOfObjects)(
    "%s is worked out as any other, and no object of the page changes",
    async (name) => {
      const before = Object.getOwnPropertyNames(Object.prototype);
      expect(await shown(bookWith([`'${name}'!A2+1`], "", name))).toMatchObject({
        B: 3.5,
        ...sound,
      });
      expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(before);
    },
  );
});

describe("defined names made to harm", () => {
  const doubling = Array.from({ length: 40 }, (_, at) =>
    nameOf(`step${String(at)}x`, `step${String(at + 1)}x+step${String(at + 1)}x`),
  ).join("");
  it.each([
    ["one that is itself", nameOf("bad", "bad+1")],
    ["two that are each other", nameOf("bad", "worse+1") + nameOf("worse", "bad+1")],
    ["forty that double", nameOf("bad", "step0x") + doubling + nameOf("step40x", "Data!$A$2")],
    ["one over all cells of a sheet", nameOf("bad", "SUM(Data!$A$2:$XFD$1048576)")],
    ["one of thousands of signs", nameOf("bad", `1${"+1".repeat(4000)}`)],
  ])("%s: what uses it is not worked out, and all else is", async (_, names) => {
    const good = nameOf("good", "Data!$A$2*3");
    expect(await shown(bookWith(["bad", "good"], names + good))).toEqual({
      A: null,
      B: 7.5,
      ...sound,
    });
  });

  it("leave those alone that use a few others", async () => {
    const names = nameOf("first", "second+second") + nameOf("second", "Data!$A$2");
    expect(await shown(bookWith(["first"], names))).toMatchObject({ B: 5, ...sound });
  });
});

describe("formulas made to harm", () => {
  it.each([
    ["thousands of plus signs", `1${"+1".repeat(4000)}`],
    ["thousands of minus signs", `${"-".repeat(8000)}1`],
    ["all cells of a sheet", "SUM(A2:XFD1048576)"],
    ["all cells, for a function of ours", "_xldudf_TITRE_CORRECTED(A2:XFD1048576)"],
    ["all rows", "_xldudf_TITRE_CORRECTED(2:1048576)"],
    ["a picture from elsewhere", `_xlfn.IMAGE("http://elsewhere.example/i.png")`],
  ])("%s: an error is shown, and all else is worked out", async (_, formula) => {
    expect(await shown(bookWith([formula]))).toEqual({ B: "#VALUE!", ...sound });
  });

  it("are not those of a long list, nor of a whole column", async () => {
    const long = `A2${"+A2".repeat(399)}`;
    expect(await shown(bookWith([long, "SUM(B5:B1048576)"]))).toMatchObject({ A: 1000, B: 0 });
  });
});

/** What a lot, an operator or a note may be called. */
const texts = [
  "=1+1",
  '=HYPERLINK("http://x","y")',
  "+cmd|'/c calc'!A0",
  "@SUM(A1)",
  "-1+1",
  "'quoted",
  "TRUE",
  "007",
  "<script>alert(1)</script>",
  "</t></is></c>",
  "_x000D_",
  "&#0;",
  "a\u0000b\u0007",
  "half \ud800 a character",
  "\u202egnp.exe",
  "#N/A",
  "__proto__",
  "x".repeat(32_767),
];

describe("texts that look like something else, written by the pane", () => {
  it("are the same texts in the saved file, and no formulas", () =>
    inGrid(fixture("tidy"), async (file) => {
      const { WorkbenchHost } = await import("../../src/host/workbench");
      const sheet = file.workbook.sheets[0]?.name ?? "";
      const block = { sheet, row: 100, column: 0, rows: texts.length, columns: 1 };
      const contents = texts.map((value) => [{ kind: "value", value } as const]);
      const host = new WorkbenchHost(file.grid.injector);
      expect(await host.write("Test", [{ do: "set-cells", block, contents }])).toBeUndefined();
      const cells = opened(await file.saved()).sheets[0]?.cells.filter(({ row }) => row >= 100);
      expect(cells?.map(({ value }) => value)).toEqual(texts);
      expect(cells?.map(({ formula }) => formula)).toEqual(texts.map(() => undefined));
    }));
});
