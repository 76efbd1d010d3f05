/** What the name box takes for an address, whatever is typed into it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addressTyped } from "../../src/workbench/address-typed";

const alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
/** A column by its number, spelled here by counting through all of two letters. */
const spelled = [
  ...alphabet,
  ...[...alphabet].flatMap((first) => [...alphabet].map((second) => first + second)),
];
const column = fc.integer({ min: 1, max: spelled.length });
const row = fc.integer({ min: 1, max: 10 ** 7 });
const money = fc.constantFrom("", "$");
const isLower = fc.boolean();
const cell = fc
  .tuple(column, row, money, money, isLower)
  .map(([columns, rows, before, between, lower]) => {
    const letters = spelled[columns - 1] ?? "";
    const text = before + (lower ? letters.toLowerCase() : letters) + between + String(rows);
    return { columns, rows, text };
  });

describe("an address typed into the name box", () => {
  it("asks for as many rows and columns as its cell or its block has", () => {
    fc.assert(
      fc.property(cell, cell, (one, other) => {
        const { rows, columns } = one;
        expect(addressTyped(` ${one.text} `)).toEqual({ rows, columns });
        expect(addressTyped(`${one.text}:${other.text}`)).toEqual({
          rows: Math.max(rows, other.rows),
          columns: Math.max(columns, other.columns),
        });
      }),
    );
    expect(addressTyped("3:5")).toEqual({ rows: 5, columns: 0 });
  });

  it("is none where another stands right behind it, and where it is half of one", () => {
    fc.assert(
      fc.property(cell, cell, (one, other) => {
        fc.pre(!other.text.startsWith("$"));
        expect(addressTyped(one.text + other.text)).toBe("none");
      }),
    );
    for (const half of ["12", "B 7", "2.45", "=A1", "1/2", "A0", "A1:", "A1:B2:C3"]) {
      expect(addressTyped(half)).toBe("none");
    }
  });

  it("is not looked at in a word without a digit, nor on another sheet", () => {
    for (const typed of ["blank", "Titrations!C5", "'Oil 2026'!B7"]) {
      expect(addressTyped(typed)).toBeUndefined();
    }
  });
});
