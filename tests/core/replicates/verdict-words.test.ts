import { describe, expect, it } from "vitest";
import { countWord, countWords } from "../../../src/core/replicates/verdict-words";

describe("a count in a verdict", () => {
  const words = "one two three four five six seven eight nine ten".split(" ");

  it("is a word up to ten, and figures beyond", () => {
    expect(words.map((_, at) => countWord(at + 1))).toEqual(words);
    expect(countWord(11)).toBe("11");
    expect(countWords).toEqual(words);
  });
});
