import { describe, expect, it } from "vitest";
import { isFileProblem } from "../../../src/xlsx";
import { restructured } from "../../../src/xlsx/structure";
import type { StructuralAct } from "../../../src/xlsx/structure/act";
import { opened } from "../answers";
import { bookOf } from "../files";

const book = () => opened(bookOf('<row r="1"><c r="A1"><v>1</v></c></row>'));

function fieldsOf(act: StructuralAct, of = book()) {
  const made = restructured(of, act);
  return isFileProblem(made) ? made.fields : undefined;
}

describe("rows and columns are not put in or taken out", () => {
  it("of a sheet that is not there", () => {
    expect(fieldsOf({ do: "insert-rows", sheet: "Pier", before: 0, count: 1 })).toEqual({
      code: "no-sheet",
      name: "Pier",
    });
  });

  it.each([
    [-1, 1],
    [0, 0],
    [1.5, 1],
    [0, 1_048_577],
  ])("from %d on, %d of them", (before, count) => {
    const act = { do: "insert-rows", sheet: "Data", before, count } as const;
    expect(fieldsOf(act)).toMatchObject({ code: "cannot-shift", trouble: "bad-lines" });
  });

  it("of a protected sheet", () => {
    const of = opened(bookOf("", '<sheetProtection sheet="1"/>'));
    const act = { do: "delete-columns", sheet: "data", first: 0, count: 1 } as const;
    expect(fieldsOf(act, of)).toMatchObject({ code: "cannot-shift", trouble: "protected" });
  });
});
