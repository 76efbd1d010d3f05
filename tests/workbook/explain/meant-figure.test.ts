import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { meantFigure } from "../../../src/workbook/explain/meant-figure";

const digits = (least: number) =>
  fc
    .array(fc.constantFrom(..."0123456789"), { minLength: least, maxLength: 4 })
    .map((each) => each.join(""));

describe("a text that was meant as a figure", () => {
  it("is told to be typed with a point, where it has a comma", () => {
    fc.assert(
      fc.property(digits(1), digits(1), (whole, part) => {
        expect(meantFigure(` ${whole},${part} `)).toBe(
          `“${whole},${part}” is words here, not a figure: type ${whole}.${part}.`,
        );
      }),
    );
    expect(meantFigure(",5")).toContain("type 0.5.");
  });

  it("is told to be typed without its unit", () => {
    const written = fc.tuple(digits(1), fc.constantFrom("", ".", ","), digits(1));
    const unit = fc.constantFrom("mL", "ml", "g", "kg", "L", "mol/L", "%", "°C", "lb", "mg KOH/g");
    fc.assert(
      fc.property(written, fc.constantFrom("", " "), unit, (parts, between, of) => {
        expect(meantFigure(parts.join("") + between + of)).toMatch(
          new RegExp(`is words here, not a figure: leave out the ${of}\\.$`),
        );
      }),
    );
  });

  it.each(["", "NQ-41", "K-5", "2.45", "fryer, dark", "12 drums", "B-118, 5", "kg", "1,2,3"])(
    "is not seen in %j",
    (text) => expect(meantFigure(text)).toBeUndefined(),
  );
});
