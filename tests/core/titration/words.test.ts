import { describe, expect, it } from "vitest";
import { neutralisedWord, neutralisedWords } from "../../../src/core/titration/neutralised";

describe("the word in place of a blank", () => {
  it("may be spelt in either way, and is shown in one", () => {
    expect([neutralisedWord, neutralisedWords]).toEqual([
      "neutralised",
      ["neutralised", "neutralized"],
    ]);
  });
});
