import { describe, expect, it } from "vitest";
import { saysAllOf } from "../../../src/taskpane/bench/otherwise";

describe("whether what stands in a task is of My bench", () => {
  const now = { titrantBase: "KOH", molarity: "0.1003" };

  it("is not where My bench is empty, or says nothing of one of the figures", () => {
    expect(saysAllOf({}, now)).toBe(false);
    expect(saysAllOf({ titrantBase: "KOH" }, now)).toBe(false);
    expect(saysAllOf({ titrantBase: "KOH", molarity: " " }, now)).toBe(false);
  });

  it("is where it says something of each figure; a base that nobody chose decides nothing", () => {
    expect(saysAllOf({ molarity: "0.1" }, now)).toBe(true);
    expect(saysAllOf({ titrantBase: "KOH", molarity: "0.1", titreStep: "0.05" }, now)).toBe(true);
  });
});
