import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { largest, mean, range, smallest, sum } from "../../../src/core/exact/lists";

const list = ["2.4", "2.55", "2.35"].map(exact);

describe("lists of exact numbers", () => {
  it("have a sum, a mean, ends and a range", () => {
    const found = [sum(list), mean(list.slice(0, 2)), largest(list), smallest(list), range(list)];
    expect(found.map(String)).toEqual(["7.3", "2.475", "2.55", "2.35", "0.2"]);
    expect(mean(list.slice(0, 1)).toString()).toBe("2.4");
  });

  it("that hold nothing have a sum of 0, and nothing else", () => {
    expect(sum([]).toString()).toBe("0");
    for (const ask of [mean, largest, smallest, range]) expect(() => ask([])).toThrow(RangeError);
  });
});
