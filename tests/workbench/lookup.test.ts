import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { bookOf } from "./book";

let workbook: HeadlessWorkbook;
beforeAll(async () => {
  workbook = await openHeadless(
    bookOf(
      [
        ["Lot", "Titre 1 mL", "Titre 2 mL", "Corrected"],
        ["A-1", 2.4, 2.5, "=TITRE.CORRECTED(Lots[[#This Row],[Titre 1 mL]:[Titre 2 mL]])"],
        ["A-2", 3.4, null, "=NA()"],
        ["=TITRE.EACHACIDVALUE(B2:C2,,0.1,5.61)"],
      ],
      [{ name: "Lots", row: 0, column: 0, rows: 3, columns: 4 }],
    ),
  );
});
afterAll(() => workbook.close());

/** As the formula in D2 would be given it. */
const seen = (written: string) =>
  workbook.cells.lookup(written, { sheet: "Sheet", row: 1, column: 3 });
const error = (basicValue: string) => [[{ type: "Error", basicValue }]];

describe("what a reference or an expression stands for", () => {
  it.each([
    ["B2", [[2.4]]],
    ["$B$2:C3", [[2.4, 2.5], [3.4, null]]], // prettier-ignore
    ["Sheet!A2", [["A-1"]]],
    ["'Sheet'!D3", error("#N/A")],
    ["Lots[[#This Row],[Titre 1 mL]:[Titre 2 mL]]", [[2.4, 2.5]]],
    ["Lots[Titre 1 mL]", [[2.4], [3.4]]],
    ["Lots[[#Headers],[Lot]]", [["Lot"]]],
    ["Lots[[#All],[Lot]]", [["Lot"], ["A-1"], ["A-2"]]],
    ["IF(COUNT(B3:C3)>1,B3:C3,B2)", [[2.4]]],
    ["IF(COUNT(B2:C2)>1,B2:C2,B3)", [[2.4, 2.5]]],
    ["SUM(B2:C2)/2", [[2.45]]],
    ["D2*2", [[4.9]]],
    ["1/0", error("#DIV/0!")],
    ["NoSuchName", error("#NAME?")],
    ["Lots[No such column]", error("#NAME?")],
    ["NOSUCHFUNCTION(1)", error("#NAME?")],
  ])("%s", (written, values) => expect(seen(written)).toEqual(values));

  it("reads spilled cells, which the sheet itself does not hold", () => {
    const [first, second] = (seen("A4:B4") ?? []).flat();
    expect(first).toBeCloseTo(2.4, 12);
    expect(second).toBeCloseTo(2.5, 12);
  });

  it("takes whole columns", () =>
    expect((seen("A:A") ?? []).flat().slice(0, 3)).toEqual(["Lot", "A-1", "A-2"]));

  it.each(["", "(", "=)", "1+"])("does not trip over %j", (written) => {
    expect(() => seen(written)).not.toThrow();
  });

  it("knows nothing of a sheet that is not there", () =>
    expect(workbook.cells.lookup("A1", { sheet: "Nowhere", row: 0, column: 0 })).toBeUndefined());

  it("leaves later calculation as it was", async () => {
    const titre = { sheet: "Sheet", row: 1, column: 1 };
    const corrected = { sheet: "Sheet", row: 1, column: 3 };
    seen("NOSUCHFUNCTION(1)");
    await workbook.type(titre, [[2.6]]);
    expect(workbook.value(corrected)).toBe(2.55);
    expect(seen("B2")).toEqual([[2.6]]);
    await workbook.type(titre, [[2.4]]);
    expect(workbook.value(corrected)).toBe(2.45);
  });
});
