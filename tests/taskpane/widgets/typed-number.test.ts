import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decimalMarkOf,
  type DecimalMark,
  readTyped,
  withMark,
} from "../../../src/taskpane/widgets/typed-number";

const read = (text: string, mark: DecimalMark = "."): string => {
  const typed = readTyped(text, mark);
  return typed.kind === "number" ? typed.plain : typed.kind;
};

const marks = [".", ","] as const;

describe("a number as it is typed", () => {
  it("is understood with a point and with a comma, wherever one lives", () => {
    for (const mark of marks) {
      expect(read("2.35", mark)).toBe("2.35");
      expect(read("2,35", mark)).toBe("2.35");
      expect(read(" 2.35 ", mark)).toBe("2.35");
      expect(read("12", mark)).toBe("12");
    }
  });

  it("keeps the zeros that were typed, since they say how finely one reads", () => {
    expect(read("2.30")).toBe("2.30");
    expect(read(",50", ",")).toBe("0.50");
    expect(read("5.")).toBe("5");
  });

  it("is refused when the other mark could stand between thousands", () => {
    expect(readTyped("1,234", ".")).toEqual({ kind: "ambiguous", small: "1.234", large: "1234" });
    expect(readTyped("1.234", ",")).toEqual({ kind: "ambiguous", small: "1,234", large: "1234" });
  });

  it("is not refused where no thousands can be meant", () => {
    expect(read("1.234", ".")).toBe("1.234");
    expect(read("1,234", ",")).toBe("1.234");
    expect(read("0,234", ".")).toBe("0.234");
    expect(read("1234,567", ".")).toBe("1234.567");
    expect(read("1,23", ".")).toBe("1.23");
  });

  it("is refused with marks between thousands, whichever", () => {
    for (const text of ["1,234.5", "1.234,5", "1 234", "1 234,5", "1'234.5", "1,234,567"]) {
      expect(read(text)).toBe("grouped");
    }
  });

  it("is refused when it is no number", () => {
    for (const text of ["abc", "2.3.4", "2 mL", "1e3", "0x10", "--1", ".", ",", "-", "½", "２"]) {
      expect(read(text)).toBe("unreadable");
    }
  });

  it("is nothing when nothing but spaces is typed", () => {
    expect(read("")).toBe("empty");
    expect(read("  ")).toBe("empty");
  });

  it("has as many digits as a cell keeps, and no more", () => {
    expect(read("1234567890.12345")).toBe("1234567890.12345");
    expect(read("1234567890.123456")).toBe("too-long");
    expect(read("0.000000000000001")).toBe("0.000000000000001");
  });

  it("is never two different numbers in two countries", () => {
    const anyText = fc.oneof(
      fc.string({ unit: fc.constantFrom(..."0123456789.,-+ '"), maxLength: 9 }),
      fc.string({ maxLength: 6 }),
    );
    fc.assert(
      fc.property(anyText, (text) => {
        const [here, there] = marks.map((mark) => readTyped(text, mark));
        if (here?.kind !== "number" || there?.kind !== "number") return;
        expect(here.value.eq(there.value)).toBe(true);
      }),
    );
  });

  it("reads back every figure that is written with this person's mark", () => {
    const figure = fc
      .tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 4 }))
      .map(([steps, places]) => (steps / 10 ** places).toFixed(places));
    fc.assert(
      fc.property(figure, fc.constantFrom(...marks), (plain, mark) => {
        expect(read(withMark(plain, mark), mark)).toBe(plain);
      }),
    );
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...marks), (text, mark) => {
        expect(readTyped(text, mark).kind).toBeTypeOf("string");
      }),
    );
  });
});

describe("the decimal mark", () => {
  it("is that of the locale", () => {
    expect(decimalMarkOf("en-GB")).toBe(".");
    expect(decimalMarkOf("de-DE")).toBe(",");
    expect(decimalMarkOf("fr-FR")).toBe(",");
  });

  it("is a point where the locale is not one", () => {
    expect(decimalMarkOf("no such place")).toBe(".");
    expect(decimalMarkOf("")).toBe(".");
  });

  it("changes the figures of a sentence and leaves its full stops", () => {
    expect(withMark("Mean 2.45 mL. Range 0.1.", ",")).toBe("Mean 2,45 mL. Range 0,1.");
    expect(withMark("Mean 2.45 mL.", ".")).toBe("Mean 2.45 mL.");
  });
});
