/** What a column is not, by its figures and its neighbours; and which guesses are called sure. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { reasonWords } from "../../../src/taskpane/logbook/column-words";

function guessed(values: readonly (readonly LogbookValue[])[]) {
  const filled = (text: string) => values.map((row) => row.map(() => text));
  const cells = { values, formulas: filled(""), formats: filled("General") };
  const [table] = recogniseSheet({ sheet: "Log", row: 0, column: 0, ...cells });
  if (!table) throw new Error("no table");
  return table.columns;
}

const roles = (values: readonly (readonly LogbookValue[])[]): string[] =>
  guessed(values).map(({ role }) => role);

const isSure = (each: Parameters<typeof reasonWords>[0]): boolean =>
  reasonWords(each).startsWith("Sure");

describe("a column by its figures and its neighbours", () => {
  it("is the sample where ten grams of oil stand beside the batch in kilograms", () => {
    const found = roles([
      ["Drum", "Titre ml", "Blank", "Oil g", "FFA %", "Oil kg", "KOH (g)"],
      ["d0", 16.2, 0.1, 10, 4.54, 91.5, 1700],
      ["d1", 25, 0.1, 10, 7.02, 91.5, 2190],
      ["d2", 3.4, 0.1, 10.1, 0.92, 91.5, 960],
    ]);
    expect(found.slice(3, 6)).toEqual(["sampleMass", "ffa", "oilMass"]);
  });

  it("is the oil where nothing but litres or gallons stand there, and never the methanol", () => {
    for (const unit of ["litres", "imp gal", "US gal", "L"]) {
      const found = roles([
        ["Date", "ml KOH a", "ml KOH b", "blank", "oil g", unit, "KOH g"],
        ["3.1.2026", 2.4, 2.5, 0.15, 10.02, 40, 1817],
        ["4.1.2026", 3.1, 3.05, 0.15, 10, 40, 1889],
        ["5.1.2026", 4, 4.1, 0.2, 9.98, 35, 2019],
      ]);
      expect(found.slice(1)).toEqual([
        "titre",
        "titre",
        "blank",
        "sampleMass",
        "oilAmount",
        "catalyst",
      ]);
    }
  });

  it("is the titre where mL alone stands beside grams", () => {
    const found = roles([
      ["Test", "Tank", "mL", "blank", "g", "mol/L", "AV"],
      [1, "T1", 2.5, 0.1, 10, 0.0985, 1.33],
      [2, "T2", 4.6, 0.1, 10.05, 0.0985, 2.47],
      [3, "T3", 3.3, 0.1, 9.95, 0.0985, 1.78],
    ]);
    expect(found.slice(2)).toEqual(["titre", "blank", "sampleMass", "molarity", "acidValue"]);
  });

  it("is an acid value where it is called AV, used or not", () => {
    const row = (head: string) => [
      ["Batch", "Tank", head, "kg", "KOH g"],
      [1, "T1", 1.33, 180, 1865],
      [2, "T2", 2.47, 180, 2095],
      [3, "T4", 3.32, 180, 2263],
    ];
    for (const head of ["AV", "AV used", "av taken", "A.V."])
      expect([head, roles(row(head))[2]]).toEqual([head, "acidValue"]);
  });

  it("is no reading, no amount and no dose where it runs from one number to the next", () => {
    const heading = fc.constantFrom("Batch", "Test", "Run", "Titration", "Oil", "Volume", "KOH g");
    fc.assert(
      fc.property(heading, fc.integer({ min: 1, max: 300 }), (head, from) => {
        const [found] = guessed([
          [head, "Titre ml", "Blank", "Sample g", "AV"],
          ...[0, 1, 2, 3].map((at) => [from + at, 2.5 + at * 0.7, 0.1, 10, 1.4 + at * 0.4]),
        ]);
        expect(["other", "number", "batch", "lot"]).toContain(found?.role);
      }),
    );
  });
});

describe("a guess", () => {
  it("is not called sure where the figures do not fit what the heading says", () => {
    const table = (assay: number) => [
      ["Titre ml", "Blank", "Sample g", "Assay"],
      [2.5, 0.1, 10, assay],
      [3.5, 0.1, 10, assay],
      [4.5, 0.1, 10, assay],
    ];
    expect(guessed(table(90)).map(isSure)[3]).toBe(true);
    expect(guessed(table(9000)).map(isSure)[3]).toBe(false);
  });

  it("is not called sure where another column fits as well and was left out", () => {
    const table = (other: string) => [
      ["Titre ml", "Blank", "Acid value", other],
      [2.5, 0.1, 1.35, 1.35],
      [3.5, 0.1, 1.91, 1.91],
      [4.5, 0.1, 2.47, 2.47],
    ];
    expect(guessed(table("Remark")).map(isSure)[2]).toBe(true);
    expect(guessed(table("Acid number")).map(isSure)[2]).toBe(false);
  });
});
