import { describe, expect, it } from "vitest";
import { cyclesOf } from "./cycles-of";

const groups = (edges: Record<string, readonly string[]>): string[] =>
  cyclesOf(new Map(Object.entries(edges)))
    .map((group) => group.join(""))
    .sort();

describe("a cycle of files", () => {
  it("is found whether two or many need each other, and where one needs itself", () => {
    expect(groups({ a: ["b"], b: ["a"], c: ["c"], d: ["a"] })).toEqual(["ab", "c"]);
    expect(groups({ a: ["b"], b: ["c", "x"], c: ["d"], d: ["b"] })).toEqual(["bcd"]);
  });

  it("is none where two ways lead to the same file", () => {
    expect(groups({ a: ["b", "c"], b: ["d"], c: ["d"], d: [] })).toEqual([]);
  });

  it("is one where two rings share a file", () => {
    expect(groups({ a: ["b"], b: ["a", "c"], c: ["d"], d: ["b"], e: ["a"] })).toEqual(["abcd"]);
  });
});
