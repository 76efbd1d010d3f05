import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call } from "../outcome";

const value = (id: string, ...given: unknown[]): unknown => {
  const seen = call(id, ...given);
  if ("value" in seen) return seen.value;
  throw new Error(`${id} gave ${seen.error} ${seen.message}`);
};
const error = (id: string, ...given: unknown[]): string => {
  const seen = call(id, ...given);
  return "error" in seen ? `${seen.error} ${seen.message}` : JSON.stringify(seen.value);
};

const cell = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 1, max: 500 }).map((n) => n / 100) },
  fc.constantFrom("", null, 0, " "),
);
const block = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 5 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), {
      minLength: rows,
      maxLength: rows,
    }),
  )
  .filter((rows) => rows.flat().some((each) => typeof each === "number" && each > 0));

describe("OUTLIERS", () => {
  it("keeps the shape of its range, leaves gaps empty and flags one reading at most", () => {
    fc.assert(
      fc.property(block, (readings) => {
        const marks = value("OUTLIERS", readings) as string[][];
        expect(marks.map((row) => row.length)).toEqual(readings.map((row) => row.length));
        for (const [row, cells] of readings.entries()) {
          for (const [column, each] of cells.entries()) {
            const isReading = typeof each === "number" && each > 0;
            expect(marks[row]?.[column] === "").toBe(!isReading);
          }
        }
        expect(marks.flat().filter((mark) => mark === "suspect").length).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("flags the same reading wherever it stands", () => {
    expect(
      value("OUTLIERS", [
        [2.9, "", 2.3],
        [2.31, 2.32, ""],
      ]),
    ).toEqual([
      ["suspect", "", "agrees"],
      ["agrees", "agrees", ""],
    ]);
  });

  it("takes one mass for all as no adjustment, and a range of masses cell by cell", () => {
    const readings = [[2.3, 2.31, 2.3, 2.76]];
    const alone = value("OUTLIERS", readings, 0.01);
    expect(value("OUTLIERS", readings, 0.01, null, [[5]])).toEqual(alone);
    expect(value("OUTLIERS", readings, 0.01, null, [[5], [5.02], [5.01], [6]])).toEqual([
      ["agrees", "agrees", "agrees", "agrees"],
    ]);
  });

  it("refuses a range of masses with one missing, naming its place", () => {
    expect(error("OUTLIERS", [[2.3, 2.31, 2.3]], 0.01, null, [[5, "", 5]])).toMatch(
      /^#VALUE! Row 1 column 2 has a reading but no sample mass/,
    );
    expect(error("OUTLIERS", [["", ""]])).toMatch(/^#N\/A No reading yet/);
    expect(error("VERDICT", [[""]])).toMatch(/^#N\/A No reading yet/);
  });
});

describe("SPREAD", () => {
  const labels = (table: unknown): string[] => (table as string[][]).map(([label]) => label ?? "");

  it("has its fifteen rows in the order of the interface, for any number of readings", () => {
    const order = labels(value("SPREAD", [[2.4, 2.5, 2.45]]));
    expect(order).toEqual([
      "readings",
      "mean, mL",
      "standard deviation, mL",
      "relative standard deviation, %",
      "range, mL",
      "half-width of the 95 % interval, scatter alone, mL",
      "reading tested, mL",
      "G: how far off, in standard deviations",
      "G with graduation: with the step that was read",
      "critical G: above it a reading is suspect",
      "p, two-sided: how often chance alone goes so far",
      "verdict",
      "farthest from the mean, mL",
      "explained by the usual scatter, mL",
      "degrees of freedom of the usual scatter",
    ]);
    for (const readings of [[2.4], [2.4, 2.5], [2.4, 2.4, 2.4], Array<number>(100).fill(1)]) {
      expect(labels(value("SPREAD", [readings]))).toEqual(order);
    }
  });

  it("says in words where a figure cannot be had, and still gives the rest", () => {
    const one = value("SPREAD", [[2.4]]) as unknown[][];
    expect(one.slice(0, 3)).toEqual([
      ["readings", 1],
      ["mean, mL", 2.4],
      ["standard deviation, mL", "one reading: no spread"],
    ]);
    const two = value("SPREAD", [[2.4, 2.5]]) as unknown[][];
    expect(two[7]).toEqual(["G: how far off, in standard deviations", "no test"]);
    expect(two[4]).toEqual(["range, mL", 0.1]);
  });

  it("tests against the confidence asked for, with the critical value of R", () => {
    const table = value("SPREAD", [[2.4, 2.5, 2.45, 2.6]], null, 99) as unknown[][];
    expect(table[5]?.[0]).toBe("half-width of the 99 % interval, scatter alone, mL");
    // The two-sided 1 % point of four, by R.
    expect(table[9]?.[1]).toBeCloseTo(1.49625, 5);
  });
});
