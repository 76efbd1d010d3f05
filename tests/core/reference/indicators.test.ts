/** The indicators, typed a second time by hand. */
import { describe, expect, it } from "vitest";
import { indicatorNamed, indicators, turnsInWords } from "../../../src/core/reference/indicators";

describe("an indicator", () => {
  it.each([
    ["phenolphthalein", "pink", "Colourless to pink, at pH 8.2 to 10 (commonly cited).", false],
    ["thymolphthalein", "blue", "Colourless to blue, at pH 9.3 to 10.5 (commonly cited).", true],
    ["alkali blue", "red", "Blue to red, at pH 9.4 to 14 (commonly cited).", true],
    ["turmeric", "red-brown", "Yellow to red-brown, at pH about 8 (commonly cited).", false],
  ] as const)("is known by its name, however it is typed: %s", (name, to, words, isForDark) => {
    const found = indicatorNamed(` ${name.toUpperCase()} `);
    expect(found && turnsInWords(found)).toBe(words);
    expect(found).toMatchObject({ name, to, isForDark });
  });

  it("is one of four, and no other word is one", () => {
    expect(indicators).toHaveLength(4);
    expect(indicatorNamed("litmus")).toBeUndefined();
  });
});
