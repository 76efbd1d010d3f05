import { describe, expect, it } from "vitest";
import type { CellContent } from "../../../src/sheet/port";
import { withoutResults } from "../../../src/workbook/planning/logbook/no-results";
import { finished } from "../../../src/workbook/planning/finished";
import { afterWriting } from "../../../src/taskpane/planned/carrying";
import type { RecordOutcome } from "../../../src/workbook/planning/plan";
import { openMemory } from "../../host/open-memory";

const block = { sheet: "Log", row: 0, column: 0, rows: 3, columns: 2 };

/** Two new columns as they came out, read back. */
async function written(one: readonly CellContent[], other: readonly CellContent[]) {
  const rows = [["Acid value", "Lye"], ...one.map((each, at) => [each, other[at] ?? ""])];
  const host = openMemory({ name: "Log", sheets: [] });
  const read = () =>
    Promise.resolve([{ kind: "cells", block, values: rows, formulas: [], formats: [] } as const]);
  const plan = finished({
    what: "add the columns",
    where: "A1:B3",
    summary: "",
    cells: [],
    makes: [],
    remarks: [],
    block,
    table: "",
    steps: [],
  });
  const outcome: RecordOutcome = {
    kind: "recorded",
    plan,
    isReadBack: true,
    isOneUndo: true,
    asides: [],
    differences: [],
    troubles: [],
    results: {},
    sentence: "Written in A1:B3.",
  };
  const asked = { ...host, read };
  return afterWriting(await withoutResults(asked as unknown as typeof host, outcome));
}

describe("new columns that were written", () => {
  it("are well when each shows a figure in some row", async () => {
    expect(await written([2.4, ""], ["", 1817])).toMatchObject({ isWell: true });
  });

  it("are not well when one of them is empty or an error in every row, and it is named", async () => {
    const after = await written([{ error: "#VALUE!" }, ""], [1, 2]);
    expect(after).toMatchObject({
      isWell: false,
      differences: [
        "Acid value shows no figure in any row: 1 row with #VALUE!, 1 row empty. Undo it, and look in Check columns at what its readings are.",
      ],
    });
  });
});
