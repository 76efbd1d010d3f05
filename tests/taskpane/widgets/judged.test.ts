import { describe, expect, it } from "vitest";
import { judge } from "../../../src/taskpane/widgets/judged";
import { numberFields } from "../../../src/taskpane/titrate/fields";

const sentence = (
  text: string,
  field: keyof typeof numberFields,
  mark: "." | "," = ".",
): string => {
  const found = judge(text, numberFields[field], mark);
  return found.kind === "wrong" ? found.sentence : found.kind;
};

describe("a number field", () => {
  it("takes what is in its range", () => {
    expect(judge("2,35", numberFields.used, ".")).toMatchObject({ kind: "figure", plain: "2.35" });
    expect(judge("", numberFields.used, ".")).toEqual({ kind: "empty" });
  });

  it("says what it expects when it holds no number", () => {
    expect(sentence("two", "used")).toBe(
      'Volume used: "two" is not a number; type a number, above 0, up to 1000 mL, with a point or a comma.',
    );
  });

  it("says what is allowed, with the hint for the usual slip", () => {
    expect(sentence("0.9", "assay")).toBe(
      "Assay of the lye is 0.9 %; allowed is above 1, up to 100 % (assay is in percent: write 90, not 0.90).",
    );
    expect(sentence("2000", "used")).toBe(
      "Volume used is 2000 mL; allowed is above 0, up to 1000 mL.",
    );
  });

  it("asks which of the two was meant when it could be two", () => {
    expect(sentence("1,234", "mass")).toBe(
      '"1,234" can be read as 1.234 or as 1234: type the one you mean.',
    );
    expect(sentence("1.234", "mass", ",")).toBe(
      '"1.234" can be read as 1,234 or as 1234: type the one you mean.',
    );
  });

  it("speaks of figures in this person's way of writing them", () => {
    expect(sentence("2,5", "density", ",")).toBe(
      "Density at 20 °C is 2,5 kg/L; allowed is from 0,5 to 1,2 kg/L.",
    );
  });

  it("knows when more digits may still put it right", () => {
    const may = (text: string, field: keyof typeof numberFields): boolean => {
      const found = judge(text, numberFields[field], ".");
      return found.kind === "wrong" && found.mayBecomeRight;
    };
    expect(may("0", "used")).toBe(true);
    expect(may("0.0", "used")).toBe(true);
    expect(may("9", "phthalatePurity")).toBe(true);
    expect(may(".", "used")).toBe(true);
    expect(may("-1", "used")).toBe(false);
    expect(may("abc", "used")).toBe(false);
    expect(may("1001", "used")).toBe(false);
  });

  it("lets a scale begin at 0.00, and no other figure be 0", () => {
    expect(judge("0.00", numberFields.start, ".")).toMatchObject({ kind: "figure" });
    for (const field of ["used", "mass", "molarity", "titreStep"] as const) {
      expect(judge("0", numberFields[field], ".").kind).toBe("wrong");
    }
  });
});
