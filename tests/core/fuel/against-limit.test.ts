/** By hand: 1.645 / 1.96 of a ± of 0.196 is 0.1645, the guard on each side of a limit of 1. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { againstLimit } from "../../../src/core/fuel/against-limit";
import { againstLimitInWords } from "../../../src/core/fuel/against-limit-words";

const said = (value: string, doubt = "0.196", limit = "1"): string =>
  againstLimitInWords(exact(value), exact(doubt), exact(limit));

describe("a figure with a doubt beside its limit", () => {
  it("is below up to the limit less the guard, and above beyond the limit and the guard", () => {
    expect(said("0.8355")).toBe(
      "below: at least 95 % sure to be under the limit of 1, as is anything up to 0.8355.",
    );
    expect(said("1.1646")).toBe(
      "above: at least 95 % sure to be over the limit of 1, as is anything beyond 1.165.",
    );
    expect([said("0.8356"), said("1.1645")].map((words) => words.slice(0, 11))).toEqual([
      "cannot tell",
      "cannot tell",
    ]);
  });

  // by hand: 0.1 off the limit takes a ± of 0.1 x 1.96 / 1.645 = 0.11915
  it("is told what doubt would decide it, in two digits", () => {
    expect(said("0.9")).toBe(
      "cannot tell: it may be under or over 1, as may anything between 0.8355 and 1.165. A ± under 0.12 would decide it.",
    );
    expect(said("1.1")).toMatch(/A ± under 0\.12 would decide it\.$/);
    for (const value of ["0.9", "1.1"]) {
      const { deciding } = againstLimit(exact(value), exact("0.196"), exact(1));
      expect(deciding.toNumber()).toBeCloseTo(0.119148936, 9);
    }
  });

  it("is told that no doubt decides it where it is the limit itself", () => {
    expect(said("1")).toMatch(/It is at the limit itself, where no ± decides\.$/);
    expect(said("1.0001")).not.toMatch(/at the limit itself/);
  });

  // by hand: 1.96 x 1.645 / 1.96 = 1.645; a guard as wide as the limit, or wider, leaves no lower edge
  it("is told a span from nothing up where the guard reaches down to nothing", () => {
    expect(said("1", "1.96")).toMatch(
      /^cannot tell: it may be under or over 1, as may anything up to 2\.645\./,
    );
    expect(said("1.645", "1.96", "1.645")).toMatch(/, as may anything up to 3\.29\. /);
    expect(said("1.646", "1.96", "1.646")).toMatch(
      /, as may anything between 0\.001 and 3\.291\. /,
    );
  });
});
