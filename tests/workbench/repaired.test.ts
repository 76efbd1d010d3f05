import { describe, expect, it } from "vitest";
import { bookOf, shownAt, withBook } from "./book";

describe("comparisons in the embedded engine", () => {
  it("pass an error on, however often the column was looked at before", () =>
    withBook(
      bookOf([
        ["=NA()", "=A1<2"],
        [1, "=IF(A1<2,0,5)"],
        [3, "=IF(A1=2,0,IF(1<2,7,8))"],
        [5, "=IF(A2<2,0,5)"],
      ]),
      (workbook) => {
        const shown = ["B1", "B2", "B3", "B4"].map((address) => shownAt(workbook, address));
        expect(shown).toEqual(["#N/A", "#N/A", "#N/A", 0]);
      },
    ));

  it("take an empty cell for 0 and for no text, and words in any case", () =>
    withBook(
      bookOf([
        [null, "=A1=0", '=A1=""', "=A1<1", '=A2="koh"', "=SUMPRODUCT((A2:A4>=2)*1)", "=A4=A3+1"],
        ["KOH", "=A1=A5", "=A3<>A4", "=A1>=A3"],
        [2],
        [3],
      ]),
      (workbook) => {
        const shown = (addresses: string) =>
          addresses.split(" ").map((address) => shownAt(workbook, address));
        expect(shown("B1 C1 D1 E1 G1")).toEqual([true, true, true, true, true]);
        // A text is more than any number.
        expect(shownAt(workbook, "F1")).toBe(3);
        expect(shown("B2 C2 D2")).toEqual([true, true, false]);
      },
    ));
});

describe("TINV in the embedded engine", () => {
  // R 4.2: qt(0.025, 3, lower.tail = FALSE), qt(0.005, 16, ...), qt(0.05, 1, ...)
  it.each([
    ["=TINV(0.05,3)", 3.182446305283709],
    ["=TINV(0.01,16)", 2.920781622425099],
    ["=TINV(0.1,1)", 6.313751514675044],
    ["=TINV(0.05,3.9)", 3.182446305283709],
  ])("gives %s to 1e-14, its degrees of freedom cut off", (formula, value) =>
    withBook(bookOf([[formula]]), (workbook) => {
      expect(Math.abs((shownAt(workbook, "A1") as number) / value - 1)).toBeLessThanOrEqual(1e-14);
    }),
  );

  it.each(["=TINV(0,3)", "=TINV(0.05,0)", '=TINV("x",3)'])("refuses %s", (formula) =>
    withBook(bookOf([[formula]]), (workbook) => {
      expect(shownAt(workbook, "A1")).toMatch(/^#/);
    }),
  );

  it("passes on what is wrong with its arguments", () =>
    withBook(bookOf([["=TINV(NA(),3)", "=TINV(0.05,A1)"]]), (workbook) => {
      expect([shownAt(workbook, "A1"), shownAt(workbook, "B1")]).toEqual(["#N/A", "#N/A"]);
    }));
});
