import { describe, expect, it } from "vitest";
import { isFileProblem, newXlsx, openXlsx, patchedXlsx, restructured } from "../../../src/xlsx";

const well = <T extends object>(made: T): T => {
  expect(isFileProblem(made)).toBe(false);
  return made;
};

describe("rows put in where a formula has no result in the file", () => {
  it.each(["Lots", "Sums"])(
    "moves a formula on the sheet %s whose cell ends where it ends",
    (on) => {
      const bytes = newXlsx({
        name: "two sheets",
        sheets: ["Lots", "Sums"].map((name) => ({
          name,
          rows: [[{ value: 1 }], [{ value: 2 }]],
          columnWidths: [],
          tables: [],
          frozenRows: 0,
        })),
      });
      const opened = openXlsx(bytes as Uint8Array);
      if (isFileProblem(opened)) throw new Error("not opened");
      const content = {
        kind: "formula",
        formula: "=SUM(Lots!$A$1:$A$2)",
        result: undefined,
      } as const;
      const made = patchedXlsx(opened, [{ do: "set-cell", sheet: on, row: 2, column: 3, content }]);
      if (isFileProblem(made)) throw new Error("not written");
      const after = well(
        restructured(made, { do: "insert-rows", sheet: "Lots", before: 1, count: 1 }),
      );
      if (isFileProblem(after)) return;
      const cells = after.sheets.find(({ name }) => name === on)?.cells ?? [];
      expect(cells.flatMap(({ formula, row }) => (formula ? [[formula, row]] : []))).toEqual([
        ["=SUM(Lots!$A$1:$A$3)", on === "Lots" ? 3 : 2],
      ]);
    },
  );
});
