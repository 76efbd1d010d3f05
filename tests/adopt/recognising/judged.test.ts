/**
 * The figures decide what a heading leaves open. The mean of 2.4 and 2.5 is 2.45; its acid value, of
 * 10 g of oil and 0.1 mol/L: 56.1 x 0.1 x (2.45 - 0.15) / 10 = 1.29.
 */
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { sureFrom } from "../../../src/adopt/recognising/sure";

const readings = [
  [2.4, 2.5, 0.15],
  [3.1, 3.2, 0.15],
  [4, 4.1, 0.2],
  [1.9, 1.95, 0.2],
] as const;

function guessed(heading: string, of: "mean" | "acid value" | "nothing") {
  const rows = readings.map(([one, two, blank], at): LogbookValue[] => {
    const mean = (one + two) / 2;
    const acid = Number(((5.61 * (mean - blank)) / 10).toFixed(2));
    const figure = of === "mean" ? mean : of === "acid value" ? acid : [1.3, 0.9, 1.8, 2.6][at];
    return [`0${String(at + 1)}.02.2026`, `D${String(at)}`, one, two, blank, 10, figure ?? ""];
  });
  const values = [["Date", "Drum", "T1 mL", "T2 mL", "Blank", "Oil g", heading], ...rows];
  const all = (text: string) => values.map((row) => row.map(() => text));
  const [table] = recogniseSheet({
    sheet: "Log",
    row: 0,
    column: 0,
    values,
    formulas: all(""),
    formats: all("General"),
  });
  const { role, score } = table?.columns[6] ?? { role: "other", score: 0 };
  return { role, isSure: score >= sureFrom };
}

describe("a column called Av., Av or AV", () => {
  it.each(["Av.", "Av", "av."])("is the mean where it holds the mean: %s", (heading) => {
    expect(guessed(heading, "mean")).toEqual({ role: "meanTitre", isSure: true });
  });

  it.each(["Av", "AV", "A.V.", "av"])("is the acid value where it holds that: %s", (heading) => {
    expect(guessed(heading, "acid value")).toEqual({ role: "acidValue", isSure: true });
  });

  it("with a point is never called sure to be a mean that its figures are not", () => {
    expect(guessed("Av.", "acid value").isSure).toBe(false);
  });
});

describe("an acid value by its heading", () => {
  it("is not called sure where its figures do not follow from the titres", () => {
    expect(guessed("Acid value", "nothing")).toEqual({ role: "acidValue", isSure: false });
  });
});
