import { describe, expect, it } from "vitest";
import type { Water } from "../../../src/core/batch/water";
import { waterInWords } from "../../../src/core/batch/water-words";
import { quantity } from "../../../src/core/quantity/quantity";

/** In the order of the table: in the oil, from the acid, from the base, in the lye, in the methanol. */
const water = (parts: readonly number[], percent: string): Water => {
  const [inOil = 0, fromAcid = 0, fromBase = 0, inLye = 0, inMethanol = 0] = parts;
  const kg = (value: number) => quantity("kg", value);
  return {
    inOil: kg(inOil),
    fromAcid: kg(fromAcid),
    fromBase: kg(fromBase),
    inLye: kg(inLye),
    inMethanol: kg(inMethanol),
    all: kg(inOil + fromAcid + fromBase + inLye + inMethanol),
    percent: quantity("%", percent),
  };
};

describe("where the water of a batch comes from", () => {
  it.each([
    [[5, 1, 2, 3, 4], "the oil: settle and dry it"],
    [[1, 5, 2, 3, 4], "the acid: blend the oil or pretreat it"],
    [[1, 2, 5, 3, 4], "base and methanol: a methoxide makes none"],
    [[1, 2, 3, 5, 4], "the lye: a drier one, of higher assay, brings less"],
    [[1, 2, 3, 4, 5], "the methanol: a drier one brings less"],
    // of two equal parts the first of the table
    [[0, 3, 3, 0, 0], "the acid: blend the oil or pretreat it"],
    [[2, 0, 0, 2, 2], "the oil: settle and dry it"],
  ])("is told by its largest part: %j", (parts, words) => {
    expect(waterInWords(water(parts, "0.5"))).toBe(
      `0.5 % of the oil's mass at most; most of it by ${words}.`,
    );
  });

  it("is told in three digits", () => {
    expect(waterInWords(water([1], "0.12345"))).toMatch(/^0\.123 % of/);
    expect(waterInWords(water([1], "1.2351"))).toMatch(/^1\.24 % of/);
  });
});
