/** A call of ours in a file has more than one form: all are read, each file's own is kept. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { shareWorkbook } from "../../src/partner/sharing";
import { type Edit, isFileProblem, type Workbook } from "../../src/xlsx";
import { root } from "../rules/sources-of";
import { cellIn, formulaIn, opened, patched } from "./answers";
import { partsOf } from "./files";
import { asDamaged, asProgramSaves, extensionPart, functionList } from "./program-form";

const plain = new Uint8Array(readFileSync(join(root, "sample-workbooks/logbook.xlsx")));
const saved = asProgramSaves(plain);
const links = ["[2]!", "'C:/Users/a b/AppData/X.xla'!", "'https://d.example/Add-ins/[X.xlam]Y'!"];

/** Formulas and what cells show, wherever they stand, and the formulas of table columns. */
const said = ({ sheets }: Workbook) =>
  sheets.map(({ name, cells, tables }) => ({
    name,
    cells: cells.map(({ row, column, value, formula }) => [row, column, value, formula]),
    columns: tables.map(({ columns }) => columns.map(({ heading, formula }) => [heading, formula])),
  }));

const singleCalls = (bytes: Uint8Array): number =>
  opened(bytes)
    .sheets.flatMap(({ cells }) => cells)
    .filter(({ formula, array }) => formula?.includes("TITRE.") && array).length;

describe("a call of ours in a file", () => {
  it("reads the same as an array with a mark, as the program writes it, and plainly", () => {
    expect(singleCalls(plain)).toBeLessThan(singleCalls(saved));
    expect(singleCalls(saved)).toBeGreaterThan(50);
    expect(said(opened(saved))).toEqual(said(opened(plain)));
  });

  it.each(links)("reads the same behind the link %s that another add-in left", (link) => {
    const damaged = asDamaged(plain, link);
    expect(partsOf(damaged)["xl/worksheets/sheet2.xml"]).toContain(`${link}_xldudf_TITRE_`);
    expect(said(opened(damaged))).toEqual(said(opened(plain)));
  });
});

const call = "=TITRE.ACIDVALUE(2.3,0.1,10)";
const put = (row: number, formula: string): Edit => ({
  do: "set-cell",
  sheet: "Start here",
  row,
  column: 8,
  content: { kind: "formula", formula, result: 1.29 },
});
const edits: Edit[] = [put(0, call), put(1, "=1+1"), put(2, `=2*${call.slice(1)}`)];

/** The cell as the file writes it. */
const cellXml = (bytes: Uint8Array, name: string): string =>
  new RegExp(`<c r="${name}".*?</c>`).exec(partsOf(bytes)["xl/worksheets/sheet1.xml"] ?? "")?.[0] ??
  "";

describe("a cell that is new in a file", () => {
  it("holds a call plainly in a file of ours", () => {
    const after = patched(plain, edits);
    expect(cellXml(after, "I1")).not.toMatch(/cm=|t="array"/);
    expect(formulaIn(opened(after), "I1", "Start here")).toBe(call);
  });

  it("holds a call as the program does in a file that the program saved, and all else plainly", () => {
    const after = patched(saved, edits);
    expect(cellXml(after, "I1")).toMatch(
      /^<c r="I1"[^>]* cm="1"><f t="array" ref="I1">_xldudf_TITRE_ACIDVALUE\(2\.3,0\.1,10\)<\/f>/,
    );
    expect(cellXml(after, "I2")).not.toMatch(/cm=|t="array"/);
    expect(cellXml(after, "I3")).toMatch(/ cm="1"><f t="array" ref="I3">2\*_xldudf_TITRE_/);
    expect(cellIn(opened(after), "I1", "Start here")).toMatchObject({ formula: call, value: 1.29 });
  });

  it.each([
    ["plainly in a table of ours", plain, /<calculatedColumnFormula>2\*_xldudf_TITRE_/],
    [
      "as the program does in a table that it saved",
      saved,
      /<calculatedColumnFormula array="1">2\*_xldudf_TITRE_/,
    ],
  ] as const)("holds the call of a new column %s", (_, bytes, written) => {
    const { tables } = opened(bytes).sheets.find(({ name }) => name === "Titrants") ?? {};
    const rows = (tables?.[0]?.area.rows ?? 1) - 1;
    const after = patched(bytes, [
      {
        do: "add-column",
        table: "Titrants",
        heading: "Twice",
        formula: `=2*${call.slice(1)}`,
        cells: Array.from({ length: rows }, () => 2.58),
      },
    ]);
    const parts = partsOf(after);
    const table = Object.entries(parts).find(
      ([name, text]) => name.startsWith("xl/tables/") && text.includes('name="Twice"'),
    );
    expect(table?.[1]).toMatch(written);
  });
});

describe("what is not touched of a file that the program saved", () => {
  it("stays, the list of functions with the web extension too", () => {
    const [before, after] = [partsOf(saved), partsOf(patched(saved, edits))];
    expect(after[extensionPart]).toContain(functionList);
    const changed = Object.keys(after).filter((name) => after[name] !== before[name]);
    expect(changed).toEqual(["xl/worksheets/sheet1.xml"]);
  });
});

describe("a partner copy", () => {
  const shared = (bytes: Uint8Array): Uint8Array => {
    const made = shareWorkbook(bytes, { kind: "partner", fileName: "logbook.xlsx" });
    if (isFileProblem(made)) throw new Error(JSON.stringify(made.fields));
    return made.bytes;
  };

  it("says and shows the same of either form, and holds no mark of the program's", () => {
    const [ofPlain, ofSaved] = [shared(plain), shared(saved)];
    // The report says of one that it opened a pane.
    const figures = (bytes: Uint8Array) =>
      said(opened(bytes)).filter(({ name }) => name !== "Read me");
    expect(figures(ofSaved)).toEqual(figures(ofPlain));
    expect(Object.values(partsOf(ofSaved)).join("")).not.toContain("_xldudf_");
  });
});
