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

const seen = (reference: string, row = 1) =>
  workbook.cells.lookup(reference, { sheet: "Sheet", row, column: 3 });
const missing = [[{ type: "Error", basicValue: "#REF!" }]];

describe("what a reference stands for", () => {
  it.each([
    ["B2", [[2.4]]],
    [
      "$B$2:C3",
      [
        [2.4, 2.5],
        [3.4, null],
      ],
    ],
    ["Sheet!A2", [["A-1"]]],
    ["'Sheet'!D3", [[{ type: "Error", basicValue: "#N/A" }]]],
    ["Lots[[#This Row],[Titre 1 mL]:[Titre 2 mL]]", [[2.4, 2.5]]],
    ["lots[[#this row],[lot]]", [["A-1"]]],
    ["Lots[Titre 1 mL]", [[2.4], [3.4]]],
    ["Lots[[#Headers],[Lot]]", [["Lot"]]],
    ["Lots[[#All],[Lot]]", [["Lot"], ["A-1"], ["A-2"]]],
    [
      "Lots",
      [
        ["A-1", 2.4, 2.5, 2.45],
        ["A-2", 3.4, null, { type: "Error", basicValue: "#N/A" }],
      ],
    ],
  ])("%s", (reference, values) => expect(seen(reference)).toEqual(values));

  it("reads spilled cells, which the sheet itself does not hold", () => {
    const [[first, second] = []] = seen("A4:B4");
    expect(first).toBeCloseTo(2.4, 12);
    expect(second).toBeCloseTo(2.5, 12);
  });

  it("takes a whole column as far as the sheet is in use", () =>
    expect(seen("A:A")).toHaveLength(4));

  it("knows no row of the table outside it", () =>
    expect(seen("Lots[[#This Row],[Lot]]", 5)).toEqual(missing));

  it.each(["Nowhere!A1", "Lots[No such column]", "NoSuchName", "1+1", ""])(
    "answers #REF! for %j",
    (reference) => expect(seen(reference)).toEqual(missing),
  );
});
