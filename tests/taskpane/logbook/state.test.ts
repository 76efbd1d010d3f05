import { describe, expect, it } from "vitest";
import {
  agreedTables,
  firstState,
  type LogbookState,
  reduce,
  shownTable,
} from "../../../src/taskpane/logbook/state";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { makeLogbook } from "../../adopt/recognising/logbooks";

function found(): LogbookState {
  const { cells } = makeLogbook(2, "all", 1);
  const tables = recogniseSheet(cells).map((guess) => ({ guess, cells, remembered: undefined }));
  return reduce(firstState, { do: "found", tables });
}

describe("the logbook task", () => {
  it("uses no guess that nobody has agreed to", () => {
    const state = found();
    expect(state.tables).toHaveLength(2);
    expect(agreedTables(state)).toEqual([]);
    const agreed = reduce(state, { do: "agree" });
    expect(agreedTables(agreed).map(({ guess }) => guess.place.firstColumn)).toEqual([0]);
  });

  it("asks again once a column has been put right", () => {
    const agreed = reduce(found(), { do: "agree" });
    const changed = reduce(agreed, { do: "column", column: 1, role: "note" });
    expect(shownTable(changed)?.isAgreed).toBe(false);
    expect(shownTable(changed)?.mapping.columns[1]?.role).toBe("note");
    expect(changed.check).toEqual({ state: "not yet" });
  });

  it("takes a mapping that was remembered as agreed to", () => {
    const state = found();
    const tables = state.tables.map(({ guess, cells, mapping }) => ({
      guess,
      cells,
      remembered: mapping,
    }));
    expect(agreedTables(reduce(firstState, { do: "found", tables }))).toHaveLength(2);
  });

  it("keeps what was agreed when a step of burette or balance is typed", () => {
    const agreed = reduce(found(), { do: "agree" });
    const typed = reduce(agreed, { do: "step", role: "titreStep", value: "0.05" });
    expect(shownTable(typed)?.isAgreed).toBe(true);
    expect(shownTable(typed)?.mapping.constants).toContainEqual({
      role: "titreStep",
      unit: "mL",
      from: { kind: "typed", value: "0.05" },
    });
  });
});

describe("a logbook with a sheet for each month", () => {
  const { cells } = makeLogbook(0, "all", 1);
  const months = ["January", "February", "March"];
  const tables = months.flatMap((sheet) =>
    recogniseSheet({ ...cells, sheet }).map((guess) => ({ guess, cells, remembered: undefined })),
  );
  const read = reduce(firstState, { do: "found", tables });

  it("is agreed to once, as one logbook", () => {
    const put = reduce(read, { do: "column", column: 1, role: "note" });
    const agreed = reduce(put, { do: "agree" });
    expect(agreedTables(agreed).map(({ mapping }) => mapping.sheet)).toEqual(months);
    expect(agreed.tables.map(({ mapping }) => mapping.columns[1]?.role)).toEqual([
      "note",
      "note",
      "note",
    ]);
  });

  it("is asked about again where one of its months is put right", () => {
    const agreed = reduce(read, { do: "agree" });
    const other = reduce(reduce(agreed, { do: "show", at: 2 }), {
      do: "column",
      column: 1,
      role: "note",
    });
    expect(agreedTables(other).map(({ mapping }) => mapping.sheet)).toEqual(months.slice(0, 2));
  });
});

describe("a logbook that is read again", () => {
  it("keeps what was agreed when rows are new, and asks again when a heading that is used has moved", () => {
    const agreed = reduce(found(), { do: "agree" });
    const read = agreed.tables.map(({ guess, cells }) => ({ guess, cells, remembered: undefined }));
    const longer = read.map((each) => ({
      ...each,
      guess: { ...each.guess, place: { ...each.guess.place, lastRow: 99 } },
    }));
    const now = reduce(agreed, { do: "refreshed", tables: longer });
    expect(shownTable(now)?.isAgreed).toBe(true);
    expect(shownTable(now)?.mapping.place.lastRow).toBe(99);
    const moved = read.map((each) => ({
      ...each,
      guess: {
        ...each.guess,
        columns: each.guess.columns.map((column, at) =>
          at === 1 ? { ...column, heading: "Else" } : column,
        ),
      },
    }));
    expect(shownTable(reduce(agreed, { do: "refreshed", tables: moved }))?.isAgreed).toBe(false);
  });
});
