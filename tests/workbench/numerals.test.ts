/** Figures written in formulas, in every spelling that the format's grammar allows. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withBook, bookOf } from "./book";

const digits = (least: number, most: number) =>
  fc.string({ unit: fc.constantFrom(..."0123456789"), minLength: least, maxLength: most });

const numerals = fc
  .tuple(
    fc.oneof(
      digits(1, 20),
      digits(1, 3).map((whole) => `${whole}.`),
      fc.tuple(digits(0, 3), digits(1, 5)).map((parts) => parts.join(".")),
    ),
    fc.constantFrom("", "", "E3", "e3", "E+3", "E-3", "E+09", "E+200", "e-200"),
  )
  .map((parts) => parts.join(""));

const asked: readonly ((numeral: string) => string)[] = [
  (numeral) => `=${numeral}`,
  (numeral) => `=(${numeral} )`,
  (numeral) => `=-${numeral}*-1`,
  (numeral) => `=IF(TRUE,${numeral})`,
  (numeral) => `=SUM(${numeral},0)`,
  (numeral) => `=INDEX({${numeral},"a"},1)`,
  (numeral) => `=IF(ISNUMBER(${numeral}),${numeral}%*100,"a text")`,
];

describe("a figure written in a formula", () => {
  it("is a figure and no text, however it is spelt", () =>
    fc.assert(
      fc.asyncProperty(fc.array(numerals, { minLength: 40, maxLength: 40 }), (written) =>
        withBook(bookOf(written.map((numeral) => asked.map((ask) => ask(numeral)))), (workbook) => {
          for (const [row, numeral] of written.entries()) {
            for (const [column, ask] of asked.entries()) {
              const value = workbook.value({ sheet: "Sheet", row, column });
              const right = Number(numeral);
              const says = `${ask(numeral)} is ${JSON.stringify(value)}`;
              expect(typeof value, says).toBe("number");
              expect(Math.abs(Number(value) - right), says).toBeLessThanOrEqual(right * 1e-15);
            }
          }
        }),
      ),
      // what failed names its formula
      { numRuns: 3, endOnFailure: true },
    ));

  it("equals the same figure in another spelling", () =>
    withBook(
      bookOf([[2.5, "=A1=2.50", "=MATCH(0.250E1,A1:A1,0)", '=IF(A1<=2.5000,"as charged","more")']]),
      (workbook) => {
        const at = (column: number) => workbook.value({ sheet: "Sheet", row: 0, column });
        expect([at(1), at(2), at(3)]).toEqual([true, 1, "as charged"]);
      },
    ));
});
