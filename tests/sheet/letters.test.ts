/** Widths of letters: against the published widths of the type, added up by hand. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linesIn, textWidth } from "../../src/sheet/letters";

describe("how wide text is drawn", () => {
  it("adds up the widths its type is published with", () => {
    // Adobe's metrics of Helvetica: O 778, i 222, l 222; figures 556, the point 278
    expect(textWidth("Oil", false)).toBeCloseTo(1.222, 9);
    expect(textWidth("90.5", false)).toBeCloseTo(1.946, 9);
    expect(textWidth("Oil", true)).toBeGreaterThan(textWidth("Oil", false));
  });

  it("gives a sign of another script a square", () => {
    expect(textWidth("油", false)).toBe(1);
    expect(textWidth("é", false)).toBeCloseTo(0.6, 9);
  });

  it("breaks lines between words, and a word only where it is wider than the room", () => {
    expect(linesIn("", 5, false)).toBe(1);
    // 'mmm' is 3 x 833 = 2.499 wide; two of them and a space are 5.276
    expect(linesIn("mmm mmm", 5.27, false)).toBe(2);
    expect(linesIn("mmm mmm", 5.28, false)).toBe(1);
    expect(linesIn("mmmmmmmmmmmm", 5, false)).toBe(2);
  });

  it("never takes fewer lines than the words take side by side, nor fewer in a narrower room", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 200 }),
        fc.double({ min: 0.5, max: 40, noNaN: true }),
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.boolean(),
        (text, room, narrower, isBold) => {
          const lines = linesIn(text, room, isBold);
          const letters = textWidth(text.split(" ").join(""), isBold);
          expect(lines).toBeGreaterThanOrEqual(Math.ceil(letters / room - 1e-9));
          expect(lines).toBeLessThanOrEqual(text.split(" ").length + Math.ceil(letters / room));
          expect(linesIn(text, room * narrower, isBold)).toBeGreaterThanOrEqual(lines);
        },
      ),
    );
  });
});
