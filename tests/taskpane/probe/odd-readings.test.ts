/** One misread figure in a probe's curve: it is named and asked about, and what is said of it stands in its line. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { oddReadings } from "../../../src/taskpane/probe/odd-readings";
import { readPairs, withSaid } from "../../../src/taskpane/probe/read-pairs";

/** Harvey, Modern Analytical Chemistry, Table 9.5: pH of a weak acid by 0.100 mol/L. */
const harvey = [
  4.52, 5.06, 5.89, 6.15, 6.63, 7.08, 7.75, 8.4, 9.29, 10.07, 10.65, 11.34, 11.63, 12,
];
const linesOf = (readings: readonly number[], times = 1): string =>
  readings.map((reading, at) => `${String(at + 1)} ${String(reading * times)}`).join("\n");
const oddIn = (text: string) => oddReadings(readPairs(text, "."));

describe("a reading against the curve", () => {
  it("is asked about by its line and figure, with what stands beside it", () => {
    const text = "mL pH\n1 6.0\n2 6.1\n3 6.3\n4 12.0\n5 6.5\n6 7.2\n7 9.8\n8 10.9\n9 11.2";
    expect(oddIn(text).odd).toEqual([
      {
        line: 5,
        question: "Line 5: is 12.0 at 4 mL right? Before it stands 6.3, after it 6.5.",
      },
    ]);
  });

  it("is asked about no more once it is kept or left out, and again when that is taken away", () => {
    const text = "1 6.0\r\n2 6.1\r\n3 12.0\r\n4 6.5\r\n5 7.2\r\n6 9.8\r\n7 10.9\r\n8 11.2";
    const out = withSaid(text, 3, "left out");
    expect(out.split("\n")[2]).toBe("3 12.0 left out");
    expect(readPairs(out, ".").points).toHaveLength(7);
    const kept = withSaid(out, 3, "kept");
    expect(readPairs(kept, ".").points).toHaveLength(8);
    expect([oddIn(out).odd, oddIn(kept).odd]).toEqual([[], []]);
    expect(oddIn(withSaid(kept, 3, "")).odd).toHaveLength(1);
  });

  it("is found wherever it lies, rising in pH and falling in mV, and nothing else is asked about", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: harvey.length - 2 }),
        fc.boolean(),
        fc.boolean(),
        (at, isHigh, isMv) => {
          const [before = 0, after = 0] = [harvey[at - 1], harvey[at + 1]];
          const slip = isHigh ? Math.min(13.9, after + 0.9) : before - 0.9;
          const slipped = harvey.map((reading, place) => (place === at ? slip : reading));
          // beside the last reading a high one hides nothing
          fc.pre(slip > after + 0.5 || !isHigh);
          const asked = oddIn(linesOf(slipped, isMv ? -59.16 : 1)).odd.map(({ line }) => line);
          expect(asked).toHaveLength(1);
          expect(asked).toContain(at + 1);
        },
      ),
    );
  });

  it("is none where a probe wavers, and many are a probe that is not steady", () => {
    const wavering = harvey.map((reading, at) => reading + (at % 2 === 0 ? 0.1 : -0.1));
    expect(oddIn(linesOf(wavering))).toEqual({ odd: [], isUnsteady: false });
    expect(oddIn(linesOf(harvey)).odd).toEqual([]);
    expect(oddIn("1 5\n2 9\n3 5\n4 9\n5 5\n6 9")).toEqual({ odd: [], isUnsteady: true });
  });
});
