/** One trial has one name and one set of answers, on the card, for the fuel, in the tables and on paper. */
import { describe, expect, it } from "vitest";
import { trialAnswers } from "../../src/core/batch/went";
import { picks } from "../../src/taskpane/fuel/picks";
import { fuel } from "../../src/workbook/tables/fuel";
import { went } from "../../src/workbook/tables/went";
import { codeOf, filesUnder } from "./sources-of";

const others = /\b3 in 27\b|[Ss]olubility trial|Did it react|drops fall/;

describe("the methanol trial", () => {
  it("has no other name in anything that is said", () => {
    const found = filesUnder("src").filter((file) => others.test(codeOf(file)));
    expect(found.map(({ path }) => path)).toEqual([]);
  });

  it("has the same answers wherever it is asked", () => {
    const column = fuel.columns.find(({ heading }) => heading === went.trial);
    expect(column?.choices).toEqual(trialAnswers);
    expect(picks.trial.choices.map(([, words]) => words)).toEqual(trialAnswers);
    expect(trialAnswers).toEqual(["clear", "cloudy", "oil at the bottom"]);
  });
});
