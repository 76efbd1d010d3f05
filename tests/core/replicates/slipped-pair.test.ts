import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { as } from "../../../src/core/quantity/quantity";
import { judgement } from "../../../src/core/replicates/judgement";
import { replicateSet } from "../../../src/core/replicates/outlier-test";
import { slippedPair } from "../../../src/core/replicates/slipped-pair";

const said = (...readings: string[]): string | undefined => {
  const set = replicateSet(
    readings.map((each) => as("mL", exact(each))),
    as("mL", exact("0.05")),
    as("%", exact("95")),
  );
  return slippedPair(set, judgement(set));
};

describe("two readings of which one has its point in the wrong place", () => {
  it("is said with both figures, whichever was typed first", () => {
    expect(said("24.5", "2.45")).toBe("24.50 mL is about ten times 2.45 mL: a slipped point?");
    expect(said("2.40", "24.5")).toBe("24.50 mL is about ten times 2.40 mL: a slipped point?");
    expect(said("245", "2.40")).toBe(
      "245.00 mL is about a hundred times 2.40 mL: a slipped point?",
    );
  });

  it("is not said of two that are merely far apart, nor of small titres five times each other", () => {
    for (const pair of [
      ["2.45", "4.90"],
      ["0.50", "0.10"],
      ["2.45", "2.50"],
    ])
      expect(said(...pair)).toBeUndefined();
  });

  it("is left to the verdict where there are three", () => {
    expect(said("24.5", "2.45", "2.40")).toBeUndefined();
  });
});
