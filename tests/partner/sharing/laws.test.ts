import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { print } from "../../../src/sheet/formula/print";
import { readFormula } from "../../../src/sheet/formula/read";
import { cornerOf, cut, restored, spotOf } from "../../../src/partner/sharing/pieces";
import { tree as trees } from "../../sheet/formula/trees";

describe("a formula with its cells taken out", () => {
  it("is the formula again when they are put back: any text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60, unit: "grapheme" }), (text) => {
        const { canonical, pieces } = cut(text);
        expect(restored(canonical, pieces)).toBe(text);
      }),
    );
  });

  it("is the formula again when they are put back, and reads as the same formula", () => {
    fc.assert(
      fc.property(trees, (tree) => {
        const text = print(tree);
        const { canonical, pieces } = cut(text);
        expect(restored(canonical, pieces)).toBe(text);
        const read = readFormula(canonical);
        expect(isProblem(read)).toBe(isProblem(readFormula(text)));
        if (!isProblem(read)) expect(restored(print(read.tree), pieces)).toBe(text);
      }),
    );
  });

  it("looks into no text, no quoted name, no square bracket and no function's name", () => {
    const text = `"A1"&'A1 log'!B2+Lots[[#This Row],[C3]]+LOG10(D4)+A1B+_A1+Q1!E5+$F$6:G$7`;
    expect(cut(text).pieces).toEqual(["B2", "D4", "E5", "$F$6", "G$7"]);
  });

  it("tells row and column of each", () => {
    const letters = fc.integer({ min: 0, max: 16_383 }).map((column) => {
      let name = "";
      for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
        name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
      }
      return { column, name };
    });
    const dollar = fc.constantFrom("", "$");
    fc.assert(
      fc.property(
        letters,
        fc.integer({ min: 1, max: 1_048_576 }),
        dollar,
        dollar,
        (c, row, a, b) => {
          const piece = `${a}${c.name}${b}${String(row)}`;
          const corner = cornerOf(piece);
          expect(corner).toEqual({
            column: c.column,
            row: row - 1,
            columnDollar: a,
            rowDollar: b,
          });
          expect(spotOf(piece)).toEqual({ row, column: c.column + 1 });
          expect(cut(piece).pieces).toEqual([piece]);
        },
      ),
    );
  });
});
