/**
 * LibreOffice reads what was written: one workbook of generated formulas, each with the figure worked
 * out by hand while it was made. Where LibreOffice is not installed this is left out, and says so; with
 * REQUIRE_ALL=1 a missing one fails.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Edit, isFileProblem, patchXlsx, sayFile } from "../../src/xlsx";
import {
  figureAt,
  headings,
  lotFigure,
  names,
  sheets,
  toldFormula,
} from "../sheet/formula/grammar/valued";
import { bookOf } from "../xlsx/files";
import { hasLibreOffice, shownBy } from "./xlsx/libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const rows = 2000;
const told = fc.sample(fc.tuple(...Array.from({ length: rows }, (_, row) => toldFormula(row))), 1);

const setCell = (sheet: string, row: number, column: number, value: string | number): Edit => ({
  do: "set-cell",
  sheet,
  row,
  column,
  content: { kind: "value", value },
});

const each = Array.from({ length: 3 }, (_, index) => index);

/** Formulas in the first column, each beside its row of the table Lots. */
function written(): Uint8Array {
  const area = { row: 0, column: 2, rows: rows + 1, columns: headings.length };
  const made = patchXlsx(bookOf(""), [
    ...sheets.flatMap((sheet, index): Edit[] => [
      { do: "add-sheet", name: sheet },
      ...each.flatMap((row) =>
        each.map((column) => setCell(sheet, row, column, figureAt(index, row, column))),
      ),
    ]),
    ...names.map(([name, value]): Edit => ({
      do: "define-name",
      name,
      refersTo: `=${String(value)}`,
    })),
    { do: "add-table", sheet: "Data", name: "Lots", area },
    ...headings.map((heading, column) => setCell("Data", 0, 2 + column, heading)),
    ...(told[0] ?? []).flatMap(({ formula }, row): Edit[] => [
      {
        do: "set-cell",
        sheet: "Data",
        row: row + 1,
        column: 0,
        content: { kind: "formula", formula, result: 0 },
      },
      ...headings.map((_, column) => setCell("Data", row + 1, 2 + column, lotFigure(row, column))),
    ]),
  ]);
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

/** LibreOffice shows what a percent sign made as "8.25%". */
function figureOf(shown: string): number {
  if (shown === "") return NaN;
  return shown.endsWith("%") ? Number(shown.slice(0, -1)) / 100 : Number(shown);
}

describe.runIf(isInstalled || isRequired)("LibreOffice", () => {
  it("works every generated formula out to the figure told by hand", () => {
    const shown = shownBy(new Map([["formulas", written()]]), 0)
      .get("formulas")
      ?.get("Data");
    const wrong = (told[0] ?? []).flatMap(({ formula, value }, row) => {
      const found = shown?.[row + 1]?.[0] ?? "";
      const isRight = Math.abs(figureOf(found) - value) <= 1e-9 * Math.abs(value);
      return isRight ? [] : [{ formula, value, found }];
    });
    expect(told[0]).toHaveLength(rows);
    expect(wrong.slice(0, 20)).toEqual([]);
  });
});
