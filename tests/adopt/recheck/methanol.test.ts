/** Methanol against its oil: honest rows are never asked about, whatever unit they are in. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import {
  methanolWords,
  oddMethanolWords,
} from "../../../src/adopt/recheck/reporting/methanol-seen";
import { bareLogbook } from "./bare-logbook";

const seenIn = (logbook: Logbook) => recheckAtOnce([logbook]).methanol;

/** Litres of oil and of methanol in the units of their columns. */
function book(
  oilUnit: string,
  methanolUnit: string,
  rows: readonly (readonly [oil: number, methanol: number | string, acidValue?: number])[],
): Logbook {
  return bareLogbook(
    [
      ["batch", undefined],
      ["oilAmount", oilUnit],
      ["acidValue", "mg KOH/g"],
      ["methanol", methanolUnit],
    ],
    rows.map(([oil, methanol, acid = 2], at) => [`B${String(at)}`, oil, acid, methanol]),
  );
}

// L in one, typed from their definitions; kg of methanol at 0.7914 kg/L, kg of oil at 0.915 kg/L
const oils = { L: 1, "US gal": 3.785411784, "imp gal": 4.54609, kg: 1 / 0.915 } as const;
const methanols = {
  L: 1,
  mL: 0.001,
  "US gal": 3.785411784,
  "imp gal": 4.54609,
  kg: 1 / 0.7914,
  "US quart": 0.946352946,
} as const;
type OilUnit = keyof typeof oils;
type MethanolUnit = keyof typeof methanols;

const honest = fc.record({
  oilUnit: fc.constantFrom(...(Object.keys(oils) as OilUnit[])),
  methanolUnit: fc.constantFrom(...(Object.keys(methanols) as MethanolUnit[])),
  rows: fc.array(
    fc.tuple(
      fc.integer({ min: 5, max: 1500 }),
      fc.integer({ min: 150, max: 300 }).map((each) => each / 1000),
      fc.integer({ min: 1, max: 99 }).map((each) => each / 10),
    ),
    { minLength: 1, maxLength: 40 },
  ),
});

describe("methanol in a logbook", () => {
  it("of 15 to 30 L for 100 L of oil is never asked about", () => {
    fc.assert(
      fc.property(honest, ({ oilUnit, methanolUnit, rows }) => {
        const written = rows.map(
          ([litres, share, acid]) =>
            [
              Number((litres / oils[oilUnit]).toPrecision(4)),
              Number(((litres * share) / methanols[methanolUnit]).toPrecision(3)),
              acid,
            ] as const,
        );
        const [seen, ...others] = seenIn(book(oilUnit, methanolUnit, written));
        expect(others).toEqual([]);
        expect(seen?.odd).toEqual([]);
        expect(seen?.ratios).toHaveLength(rows.length);
      }),
      { numRuns: 60 },
    );
  });

  // 20 % v/v is 4.780:1 and 25.1033 L for 100 L are 6:1, of triolein at 0.915 kg/L and methanol at 0.7914 kg/L
  it.each([
    [20, 4.78],
    [25.1033, 6],
    [22, 5.258],
  ])("of %s L for 100 L of oil without acid is %s:1", (litres, ratio) => {
    const [seen] = seenIn(book("L", "L", [[100, litres, 0]]));
    expect(seen?.ratios[0]).toBeCloseTo(ratio, 2);
  });

  it("is asked about where it is less than is used up, and where a digit is too many", () => {
    const rows = [20, 22, 2, 21, 200, 25].map((litres) => [100, litres] as const);
    const [seen] = seenIn(book("L", "L", rows));
    expect(seen?.odd.map(({ kind, rows: at }) => [kind, at])).toEqual([
      ["little", [3]],
      ["much", [5]],
    ]);
    // 2 % v/v of the oil's volume: 0.478:1 without acid; 1.005 % FFA take a hundredth of the triglyceride
    expect(seen && oddMethanolWords(seen)[0]).toBe(
      "Methanol is 0.48:1 to the oil by mole, less than the 3:1 that the reaction uses up: was more put in, or is the figure in another unit? (row 4)",
    );
  });

  it("that is odd in most rows is a question of its column, and of no row", () => {
    const rows = [20, 21, 22, 19, 20, 24].map((litres) => [100, litres] as const);
    const [seen] = seenIn(book("L", "mL", rows));
    expect(seen?.odd.map(({ kind }) => kind)).toEqual(["column"]);
    expect(seen && oddMethanolWords(seen)[0]).toMatch(/is the column in another unit/);
  });

  it("in two columns is no whole: nothing is said of too little", () => {
    const one = book("L", "L", [[100, 4]]);
    const second = { column: 4, heading: "Methanol 2nd", role: "other", unit: undefined } as const;
    const mapping = { ...one.mapping, columns: [...one.mapping.columns, second] };
    expect(seenIn({ ...one, mapping })[0]?.odd).toEqual([]);
  });

  it("of oil above the acid of a plain base batch, without its oil, or without a unit is not looked at", () => {
    expect(seenIn(book("L", "L", [[100, 5, 16]]))).toEqual([]);
    expect(seenIn(book("L", "L", [[100, ""]]))).toEqual([]);
    expect(seenIn(book("L", "gal", [[100, 5]]))).toEqual([]);
  });

  it("is told beside what is usual, with the source", () => {
    const [seen] = seenIn(
      book("L", "L", [
        [100, 20, 0],
        [100, 25.1033, 0],
      ]),
    );
    expect(seen && methanolWords(seen)).toBe(
      "Methanol to oil by mole, 2 rows looked at: 4.8:1 to 6:1. Usual is 6:1, 25 L for 100 L of oil (Freedman, Pryde, Mounts, JAOCS 61 (1984) 1638 (commonly cited)); 20 L, 4.8:1, is common practice, no source.",
    );
  });
});
