/** A copy of a workbook whose sheets are called by whatever a stranger likes. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/core/problem/problem";
import { readFormula } from "../../src/sheet/formula/read";
import { sheetOf as sheetNamed } from "../../src/sheet/formula/reference";
import { nodesOf } from "../../src/sheet/formula/walk";
import { shareWorkbook } from "../../src/partner/sharing";
import { isFileProblem, openXlsx, sayFile, type Workbook } from "../../src/xlsx";
import { escapeAttribute } from "../../src/xlsx/xml/escape";
import { times } from "../thorough";
import { partsWith, sheetOf, zipped } from "../xlsx/files";
import { namesOfObjects } from "./names-as-keys";

const call = "_xldudf_TITRE_MEANACIDVALUE(A1:C1,D1,0.1,E1)";

function bookOf(sheet: string, formulas: readonly string[]): Uint8Array {
  const inputs = [2.4, 2.5, 2.45, 0.15, 10].map((value) => `<c><v>${String(value)}</v></c>`);
  const cells = formulas.map((formula) => `<c><f>${formula}</f><v>1</v></c>`);
  const parts = partsWith(sheetOf(`<row r="1">${[...inputs, ...cells].join("")}</row>`));
  const listed = (parts["xl/workbook.xml"] ?? "").replace(
    '"Data"',
    () => `"${escapeAttribute(sheet)}"`,
  );
  return zipped({ ...parts, "xl/workbook.xml": listed }, 0);
}

function copyOf(bytes: Uint8Array) {
  const made = shareWorkbook(bytes, { kind: "partner", fileName: "log.xlsx", day: "2026-05-04" });
  if (isFileProblem(made)) throw new Error(sayFile(made));
  const copy = openXlsx(made.bytes);
  if (isFileProblem(copy)) throw new Error(sayFile(copy));
  return { made, copy };
}

/** The sheets that formulas of the copy's helper cells name. */
function namedSheets({ sheets }: Workbook): Set<string> {
  const workings = sheets.find(
    ({ name }) => /^Workings( 2)?$/.test(name) && name !== sheets[0]?.name,
  );
  const named = new Set<string>();
  for (const { formula } of workings?.cells ?? []) {
    const read = formula === undefined ? undefined : readFormula(formula);
    if (read === undefined) continue;
    if (isProblem(read)) throw new Error(formula);
    for (const node of nodesOf(read.tree)) {
      const sheet = node.kind === "reference" ? sheetNamed(node) : undefined;
      if (sheet) named.add(sheet.first);
    }
  }
  return named;
}

const odd = [
  ...namesOfObjects,
  "=1+1",
  "a'b",
  'a"b',
  "<script>",
  "</t>",
  "_x000D_",
  "&#0;",
  "\u202egnp.xlsx",
  "A1",
  "R1C1",
  "RC",
  "TRUE",
  "1e5",
  "-1",
  "Workings",
  "workings",
  "Read me",
  "a!b",
  "$A$1",
  "TITRE.DOSE(1)",
  "#REF!",
  "a b c",
  "ünï ☂",
  "{1}",
];

/** What programs let a sheet be called: no brackets, colons, stars, question marks, slashes. */
const name = fc.oneof(
  fc.constantFrom(...odd),
  fc
    .string({ unit: "grapheme", minLength: 1, maxLength: 20 })
    .map((text) => text.replace(/[[\]:*?/\\\p{Control}\p{Surrogate}]|^'|'$/gu, "x").trim())
    .filter((text) => text !== "" && !text.startsWith("'") && !text.endsWith("'")),
);

describe("whatever a sheet is called", () => {
  it("the partner copy opens, keeps the name and refers to it", () => {
    fc.assert(
      fc.property(name, (sheet) => {
        const { copy } = copyOf(bookOf(sheet, [call]));
        expect(copy.sheets[0]?.name).toBe(sheet);
        expect([...namedSheets(copy)]).toEqual([sheet]);
      }),
      { numRuns: times(60) },
    );
  });
});

describe("one formula, however large", () => {
  const all = "A1:XFD1048576";
  it.each([
    ["all cells of a sheet", `_xldudf_TITRE_MEANACIDVALUE(${all},${all},0.1,${all})`],
    ["all columns", "_xldudf_TITRE_MEANACIDVALUE(A:XFD,A:XFD,0.1,A:XFD)"],
    ["thousands of plus signs", `_xldudf_TITRE_CORRECTED(1${"+1".repeat(4000)})`],
    ["thousands of percent signs", `_xldudf_TITRE_CORRECTED(1${"%".repeat(8000)})`],
    ["thousands of powers", `_xldudf_TITRE_CORRECTED(2${"^2".repeat(4000)})`],
  ])("of %s: the copy is made, and what is left in it is told", (_, formula) => {
    const { made, copy } = copyOf(bookOf("Log", [call, formula]));
    const cells = new Map(copy.sheets[0]?.cells.map((each) => [each.column, each.formula]));
    expect(cells.get(5)).not.toMatch(/TITRE/);
    const left = /TITRE/.test(cells.get(6) ?? "") ? ["Log!G1"] : [];
    expect(made.report.left.map(({ cell }) => cell)).toEqual(left);
  });
});
