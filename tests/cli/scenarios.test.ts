import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { isFileProblem, openXlsx } from "../../src/xlsx";
import { root } from "../rules/sources-of";

const bytes = readFileSync(join(root, "tests/scenarios.xlsx"));
const steps = readFileSync(join(root, "tests/scenarios.md"), "utf8");

/** The cells of a sheet as texts, row by row, without those that hold nothing. */
function rowsOf(name: string): Map<number, unknown[]> {
  const book = openXlsx(bytes);
  if (isFileProblem(book)) throw new Error("not a workbook");
  const rows = new Map<number, unknown[]>();
  for (const { row, column, value } of book.sheets.find((sheet) => sheet.name === name)?.cells ??
    []) {
    const cells = rows.get(row) ?? [];
    cells[column] = value;
    rows.set(row, cells);
  }
  return rows;
}

const rowNamed = (rows: Map<number, unknown[]>, name: string) =>
  [...rows.values()].find(([first]) => first === name) ?? [];

describe("the workbook for a person with the program", () => {
  it.each(["Examples", "Cells"])("has nothing that differs in %s as it is saved", (name) => {
    const rows = rowsOf(name);
    expect(rowNamed(rows, "Differ")[1]).toBe(0);
    const agrees = [...rows.values()].filter((cells) => typeof cells.at(-1) === "boolean");
    expect(agrees.length).toBeGreaterThan(15);
    expect(agrees.every((cells) => cells.at(-1) === true)).toBe(true);
  });

  it("holds every function, in Examples or in Spills", () => {
    const book = openXlsx(bytes);
    if (isFileProblem(book)) throw new Error("not a workbook");
    const formulas = book.sheets
      .flatMap(({ cells }) => cells.map(({ formula }) => formula ?? ""))
      .join(" ");
    for (const { id, spills } of catalogue) {
      if (spills !== true) expect(formulas).toContain(`TITRE.${id}(`);
    }
    expect(formulas).toContain("TITRE.CHECKS()");
  });

  it("is told about in steps that name the right number of functions", () => {
    expect(steps).toContain(`${catalogue.length} functions`);
    expect(steps.match(/^\| \d+\.\d+ /gm)?.length).toBeGreaterThan(35);
  });
});
