/**
 * Cells hold up to 32,767 characters of anything. What looks into them takes no longer for long texts
 * than for short ones: each of these took seconds a cell when it looked at all of it, so that nobody
 * would see the end of hundreds.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { functionNamed } from "../../src/functions/catalogue";
import { isReadable } from "../../src/sheet/formula/readable";
import { readFormula } from "../../src/sheet/formula/read";
import { tokensOf } from "../../src/sheet/formula/token";
import { isProblem } from "../../src/core/problem/problem";
import { headingParts } from "../../src/adopt/recognising/heading";
import { hasDecimalComma, numberFromText } from "../../src/adopt/recognising/typed-number";

const cell = 32_767;
const filled = (start: string, unit: string, end: string, length: number): string =>
  (start + unit.repeat(length)).slice(0, length - end.length) + end;

describe("a text as long as a cell holds", () => {
  it.each([
    ["no heading", "((", "!"],
    ["no unit", "g l ", "]"],
    ["no figure", " ", "!"],
  ])("that is %s takes no time", (_, unit, end) => {
    const text = filled("~", unit, end, cell);
    for (let times = 0; times < 200; times += 1) {
      headingParts(text);
      expect(numberFromText(text, "decimal")).toBeUndefined();
      hasDecimalComma(text);
    }
  });

  it("is a heading by its first 255 characters", () => {
    const long = `Titre 2 (mL)${" ".repeat(cell)}`;
    expect(headingParts(long)).toEqual(headingParts("Titre 2 (mL)"));
  });

  it("is no number, be it all digits", () => {
    expect(numberFromText("9".repeat(10_000), "thousands")).toBeUndefined();
    expect(numberFromText(`1e${"9".repeat(10_000)}`, "thousands")).toBeUndefined();
  });
});

describe("a formula made to take its time", () => {
  const words = ["1", "1.", "[", "'", "'[", "x'", "a.", "!", "A1:", "T[", "#", "\\"];
  it.each(words)("of thousands of %s is not looked into", (unit) => {
    const text = `=${filled("", unit, "", 8000)}`;
    for (let times = 0; times < 100; times += 1) expect(isProblem(readFormula(text))).toBe(true);
    expect(tokensOf(text).map((token) => token.text)).toEqual([text]);
  });

  it("is none of those that people write", () => {
    const reference = "Titrations[[#This Row],[Acid value mg KOH/g]]";
    const long = `=${Array.from({ length: 150 }, () => reference).join("+")}`;
    expect(isReadable(long)).toBe(true);
    expect(isReadable("='C:\\lots\\may\\[oil book.xlsx]Log book'!A1&\"a b c\"")).toBe(true);
  });

  it("never makes the reader throw, whatever it is made of", () => {
    const signs = fc.constantFrom(
      "(",
      "-",
      "+",
      "%",
      "A1",
      "{",
      ",",
      '"',
      "'",
      "[",
      "@",
      "#",
      "1",
      " ",
    );
    const text = fc
      .tuple(fc.array(signs, { minLength: 1, maxLength: 3 }), fc.integer({ min: 1, max: 8000 }))
      .map(([unit, times]) => `=${unit.join("").repeat(times)}`.slice(0, 8192));
    fc.assert(
      fc.property(text, (formula) => {
        readFormula(formula);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a whole column", () => {
  it("is read by a function, though it is more than can be handed over at once", () => {
    const column = Array.from({ length: 300_000 }, (_, row) => [row < 2 ? 2.4 + row / 10 : null]);
    // (2.4 + 2.5) / 2
    expect(functionNamed("CORRECTED")?.evaluate([column])).toBe(2.45);
  });
});
