import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { numberMeant } from "../../../src/core/problem/number-meant";

describe("a text where a number belongs", () => {
  it.each([
    ["2,45", "write 2.45"],
    [" 0,1 ", "write 0.1"],
    ["1,234", "write 1234 or 1.234"],
    ["2.45 mL", "type the number alone, 2.45"],
    ["0,1 M", "type the number alone, 0.1"],
    ["90%", "type the number alone, 90"],
    ["2.45", "it is kept as text, so type it again"],
    ["12,34", "write 12.34"],
    ["1,2345", "write 1.2345"],
    ["1.234", "it is kept as text, so type it again"],
    ["1".repeat(40), "it is kept as text, so type it again"],
    ["12", "it is kept as text, so type it again"],
  ])("says what to do with %j", (text, hint) => {
    expect(numberMeant(text)).toBe(hint);
  });

  it.each([
    "two",
    "",
    "2.4.5",
    "1,234.5",
    "2026-09-03",
    "~2.4",
    "2.4 or 2.5",
    "-",
    ",5",
    "1".repeat(41),
  ])("guesses nothing from %j", (text) => {
    expect(numberMeant(text)).toBe("");
  });

  it("names the very figure, whatever unit stands behind it", () => {
    const units = fc.constantFrom("mL", "g", "mol/L", "%", "mg KOH/g", "ml of KOH");
    fc.assert(
      fc.property(fc.nat(9999), fc.nat(99), units, (whole, decimals, unit) => {
        const figure = `${whole}.${decimals}`;
        expect(numberMeant(`${figure} ${unit}`)).toBe(`type the number alone, ${figure}`);
      }),
    );
  });

  it("is a short end of a sentence for any text, and never an exception", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (text) => {
        expect(numberMeant(text).length).toBeLessThan(70);
      }),
    );
  });
});
