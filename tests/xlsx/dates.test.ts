import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoToSerial, serialToIso } from "../../src/xlsx";
import { opened, patched, set, valueIn, cellIn } from "./answers";
import { made } from "./files";

/** ECMA-376 part 1, 18.17.4.1 and 18.17.4.3, and the first days of each system. */
const known: [string, number | undefined, number | undefined][] = [
  ["1900-01-01", 1, undefined],
  ["1900-02-28", 59, undefined],
  ["1900-03-01", 61, undefined],
  ["1904-01-01", 1462, 0],
  ["1910-02-03", 3687, 2225],
  ["2026-05-04", 46146, 44684],
  ["2026-05-04T18:00", 46146.75, 44684.75],
  ["9999-12-31", 2958465, 2957003],
  ["1899-12-31", undefined, undefined],
  ["2026-02-30", undefined, undefined],
  ["2026-05-04T25:00", undefined, undefined],
  ["4 May 2026", undefined, undefined],
];

describe("dates", () => {
  it.each(known)("%s is day %s of the 1900 system and %s of the 1904 system", (text, a, b) => {
    expect(isoToSerial(text, 1900)).toBe(a);
    expect(isoToSerial(text, 1904)).toBe(b);
  });

  it("come back from their numbers", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2_957_000 }),
        fc.integer({ min: 0, max: 86_399 }),
        fc.constantFrom(1900 as const, 1904 as const),
        (days, seconds, system) => {
          // The day that never was has no date of its own.
          fc.pre(system === 1904 || days !== 60);
          const text = serialToIso(days + seconds / 86_400, system) ?? "";
          expect(isoToSerial(text, system)).toBeCloseTo(days + seconds / 86_400, 9);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("written to a file count by its own system, and look like dates", () => {
    const date = {
      do: "set-cell",
      content: { kind: "value", value: { date: "2026-05-04" } },
    } as const;
    const lots = opened(patched(made("dynamic"), [{ ...date, sheet: "Lots", row: 20, column: 0 }]));
    expect(valueIn(lots, "A21")).toBe(44684);
    expect(lots.looks[cellIn(lots, "A21")?.look ?? 0]?.format).toBe("yyyy-mm-dd");
    const log = opened(
      patched(made("charts"), [{ ...date, sheet: "Log book", row: 4, column: 0 }]),
    );
    expect(valueIn(log, "A5")).toBe(46146);
    expect(valueIn(opened(patched(made("charts"), [set("A5", 1, "Log book")])), "A5")).toBe(1);
  });
});
