import { describe, expect, it } from "vitest";
import { openQuestions } from "../../../src/adopt/recognising/questions";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { firstState, reduce, shownTable } from "../../../src/taskpane/logbook/state";
import { wantsAgreeing } from "../../../src/taskpane/logbook/wants-agreeing";
import { makeLogbook } from "../../adopt/recognising/logbooks";

describe("the steps after Check columns", () => {
  const { cells } = makeLogbook(2, "all", 1);
  const tables = recogniseSheet(cells).map((guess) => ({ guess, cells, remembered: undefined }));
  const whole = reduce(firstState, { do: "found", tables });
  const blank = shownTable(whole)?.guess.columns.find(({ role }) => role === "blank")?.column;
  if (blank === undefined) throw new Error("no blank");
  const found = reduce(whole, { do: "column", column: blank, role: "other" });

  it("wait for the columns to be agreed, and say how many questions are open and what to press", () => {
    const table = shownTable(found);
    if (!table) throw new Error("no table");
    const open = openQuestions(table.mapping, table.cells);
    expect(open).toBeGreaterThan(0);
    expect(wantsAgreeing(found)).toContain(`${String(open)} question`);
    expect(wantsAgreeing(found)).toContain("Skip the questions");
  });

  it("wait for no more than one press where nothing is open", () => {
    expect(wantsAgreeing(whole)).toContain("These are right");
    expect(wantsAgreeing(whole)).not.toContain("question");
  });

  it("wait for nothing once they are agreed", () => {
    expect(wantsAgreeing(reduce(found, { do: "agree" }))).toBeUndefined();
  });
});
