import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dotsOf, plotWords } from "../../../src/taskpane/titrate/picture/ffa-dots";
import { type Dot, dotPlot } from "../../../src/taskpane/titrate/picture/dot-plot";
import { after, but, draftOf, seen } from "./slip";

const dot = (value: number, isOmitted = false): Dot => ({ name: `at ${value}`, value, isOmitted });
const width = 300;
const edge = 20;

describe("the dot plot", () => {
  it("keeps every dot, the mean and the interval inside the drawing", () => {
    const value = fc.double({ min: 0.01, max: 90, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(value, { minLength: 1, maxLength: 6 }),
        fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined }),
        (values, half) => {
          const mean = values.reduce((sum, each) => sum + each, 0) / values.length;
          const plot = dotPlot(
            values.map((each) => dot(each)),
            mean,
            half,
            width,
            edge,
          );
          const all = [...plot.dots.map(({ x }) => x), plot.mean, ...(plot.interval ?? [])];
          for (const x of all) {
            expect(x).toBeGreaterThanOrEqual(edge - 1e-6);
            expect(x).toBeLessThanOrEqual(width - edge + 1e-6);
          }
        },
      ),
    );
  });

  it("stands equal dots one above another", () => {
    const rows = dotPlot([dot(2), dot(2), dot(2)], 2, undefined, width, edge).dots.map(
      ({ row }) => row,
    );
    expect(rows).toEqual([0, 1, 2]);
  });

  it("stands dots that are apart side by side", () => {
    const plot = dotPlot([dot(1), dot(2)], 1.5, 0.5, width, edge);
    expect(plot.dots.map(({ row }) => row)).toEqual([0, 0]);
    expect(plot.interval).toEqual([edge, width - edge]);
  });
});

describe("the dots of a titration", () => {
  it("are its titres as % FFA, the omitted one too, and all of it in words", () => {
    const draft = after(
      draftOf(
        but({
          typed: { certified: "0.1", mass: "28.2" },
          picked: { blank: "neutralised" },
          titres: ["10", "20", "30"],
        }),
      ),
      { do: "omit", index: 2, reason: "spilt" },
    );
    // 10 mL of 0.1 mol/L on 28.2 g is 1 %
    const dots = dotsOf(seen(draft));
    expect(dots.map(({ value }) => value.toFixed(9))).toEqual([
      "1.000000000",
      "2.000000000",
      "3.000000000",
    ]);
    expect(dots.map(({ isOmitted }) => isOmitted)).toEqual([false, false, true]);
    expect(plotWords(dots, 1.5, 0.25)).toBe(
      "Titre 1 1.00; Titre 2 2.00; Titre 3 3.00, omitted; mean 1.50, interval from 1.25 to 1.75, all in % FFA.",
    );
    // no oil has less than no acid
    expect(plotWords(dots, 1.5, 2)).toMatch(/interval from 0\.00 to 3\.50/);
  });
});
