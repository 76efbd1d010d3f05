/** Water in the oil: told where it is too much for a base batch, in whichever unit, and no row accused. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aboveLimitWords } from "../../../src/adopt/recheck/reporting/above-limit";
import { uncheckedWords } from "../../../src/adopt/recheck/reporting/unchecked";
import { mappingFrom } from "../../../src/adopt/recognising/mapping";
import { lacks } from "../../../src/adopt/recognising/lacks";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { sheetOf } from "../../taskpane/logbook/typed-pane";
import { times } from "../../thorough";
import { logbookOf, rowOf, usual } from "./rows";

/** A logbook of right rows with one column more. */
function book(unit: string, cells: readonly (number | string)[]) {
  const { mapping, cells: own } = logbookOf(
    cells.map((_, at) => rowOf({ ...usual, amount: 90 + at })),
  );
  const column = own.values[0]?.length ?? 0;
  const wide = <T>(rows: readonly (readonly T[])[], last: (at: number) => T) =>
    rows.map((row, at) => [...row, last(at)]);
  return {
    mapping: {
      ...mapping,
      columns: [
        ...mapping.columns,
        { column, heading: "Water", role: "waterContent" as const, unit },
      ],
    },
    cells: {
      ...own,
      values: wide(own.values, (at) => (at === 0 ? "Water" : (cells[at - 1] ?? ""))),
      formulas: wide(own.formulas, () => ""),
      formats: wide(own.formats, () => "General"),
    },
  };
}

describe("the water of a logbook's oil", () => {
  // 0.06 %, 600 in a million: at most so much (M. Canakci and J. Van Gerpen; facts of ROUTE)
  it("is told above 0.06 % and nowhere else, and accuses no right row", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 30_000 }), { minLength: 3, maxLength: 8 }),
        fc.constantFrom("%", "ppm", "mg/kg"),
        (millionths, unit) => {
          const cells = millionths.map((each) =>
            unit === "%" ? Number(`${String(each)}e-4`) : each,
          );
          const report = recheckAtOnce([book(unit, cells)]);
          expect(report.findings).toEqual([]);
          const wet = millionths.flatMap((each, at) => (each > 600 ? [at + 1] : []));
          expect(report.aboveLimit.flatMap(({ of, rows }) => (of === "water" ? rows : []))).toEqual(
            wet,
          );
        },
      ),
      { numRuns: times(15) },
    );
  });

  it("is left alone where nothing is a figure, or no oil holds so much", () => {
    const report = recheckAtOnce([book("%", ["dry", "", 85, "~0.3"])]);
    expect([report.findings, report.aboveLimit]).toEqual([[], []]);
  });

  it("is told with its figure where no oil holds so much or so little, and is read as nothing", () => {
    const whys = (unit: string, cells: readonly (number | string)[]): string[] => {
      const report = recheckAtOnce([book(unit, cells)]);
      expect([report.findings, report.aboveLimit]).toEqual([[], []]);
      return report.unchecked.map(uncheckedWords);
    };
    expect(whys("%", [0.05, 500, 0.04, -0.3, 35])).toEqual([
      "Not checked: Water holds 500 %, and nothing holds more than 100 % (row 3).",
      "Not checked: Water holds -0.3 %, and water is never below 0 (row 5).",
      "Not checked: Water holds 35 %, more than oil for a batch ever holds: is its unit another? (row 6).",
    ]);
    expect(whys("ppm", [450, 0.05, 0, 510])).toEqual([
      "Not checked: Water holds 0.05 ppm, less than oil ever holds: is its unit another? (row 3).",
    ]);
    // a whole column in another unit is one line
    expect(whys("%", [350, 420, 510])).toEqual([
      "Not checked: Water holds 350 to 510 %, and nothing holds more than 100 % (rows 2 to 4).",
    ]);
    expect(whys("%", [0.05, 0.01, 0.06])).toEqual([]);
  });

  it("is asked for its unit, once, where neither heading nor figures tell it", () => {
    const { mapping, cells } = book("", [12, 9, 22, 15]);
    const asked = (unit: string | undefined): string[] =>
      lacks(
        {
          ...mapping,
          columns: mapping.columns.map((each) =>
            each.role === "waterContent" ? { ...each, unit } : each,
          ),
        },
        cells,
      ).map(({ sentence }) => sentence);
    expect(asked(undefined).filter((each) => each.includes("Water"))).toEqual([
      expect.stringMatching(/^In which unit is [A-Z]+: Water\?$/),
    ]);
    expect(asked("ppm").join()).not.toContain("Water");
  });

  it("is said with its figures and its rows", () => {
    const [told] = recheckAtOnce([book("ppm", [1100, 900, 300])]).aboveLimit;
    expect(told && aboveLimitWords(told)).toMatch(
      /^0\.09 to 0\.11 % water is above 0\.06 %: dry the oil first, water makes soap \(rows 2.*3\)\.$/,
    );
  });
});

describe("a column of water", () => {
  it.each([
    ["Water %", [0.05, 0.11, 0.08, 0.3], "%"],
    ["Water ppm", [500, 1100, 800, 300], "ppm"],
    ["Moisture mg/kg", [500, 1100, 800, 300], "mg/kg"],
    ["Wassergehalt", [500, 1100, 800, 300], "ppm"],
    ["Humedad", [0.05, 0.11, 0.08, 0.3], "%"],
    ["Moisture", [12, 9, 22, 15], undefined],
  ])("“%s” is recognised with its unit", (heading, figures, unit) => {
    const [guess] = recogniseSheet(
      sheetOf([
        ["Batch", "Oil L", "FFA %", heading, "KOH total g"],
        ...figures.map((each, at) => [`B${String(at)}`, 90 + at, 2 + at / 10, each, 900 + at]),
      ]),
    );
    expect([guess?.columns[3]?.role, guess?.columns[3]?.unit]).toEqual(["waterContent", unit]);
  });

  it.each(["Wash water L", "Soap ppm", "Water price"])("“%s” is none", (heading) => {
    const [guess] = recogniseSheet(
      sheetOf([
        ["Batch", "Oil L", "FFA %", heading],
        ...[40, 55, 62, 48].map((each, at) => [`B${String(at)}`, 90 + at, 2 + at / 10, each]),
      ]),
    );
    expect(guess?.columns[3]?.role).not.toBe("waterContent");
  });
});

describe("water by a dish weighed before and after heating", () => {
  const head = ["Batch", "Oil L", "FFA %", "KOH total g"];
  const dishes = ["Dish empty g", "Dish + oil before g", "Dish + oil after g"];
  /** By hand: 20.5 g of oil less 0.022 g is 0.107 %; 20 g less 0.006 g is 0.03 %. */
  const masses = [
    [45.312, 65.812, 65.79],
    [44.1, 64.1, 64.094],
    [45.3, 65.3, 65.3],
  ];
  const bookOf = (held: readonly (number | string)[] = []) => {
    const cells = sheetOf([
      [...head, ...dishes, ...(held.length > 0 ? ["Water %"] : [])],
      ...masses.map((dish, at) => [
        `B${String(at)}`,
        [90, 120, 75][at] ?? 0,
        [2, 2.35, 1.9][at] ?? 0,
        [900, 1180, 770][at] ?? 0,
        ...dish,
        ...(held.length > 0 ? [held[at] ?? ""] : []),
      ]),
    ]);
    const [guess] = recogniseSheet(cells);
    if (!guess) throw new Error("no table");
    return { guess, cells, report: recheckAtOnce([{ mapping: mappingFrom(guess), cells }]) };
  };
  const wet = ({ report }: ReturnType<typeof bookOf>) =>
    report.aboveLimit.filter(({ of }) => of === "water");

  it("is recognised as such, and worked out where no other column says it", () => {
    const book = bookOf();
    expect(book.guess.columns.slice(4).map(({ role }) => role)).toEqual([
      "dish",
      "dishBefore",
      "dishAfter",
    ]);
    expect(wet(book).map(({ rows }) => rows)).toEqual([[1]]);
    expect(wet(book)[0]?.most).toBeCloseTo(0.1073, 4);
  });

  it("is compared with the column of water beside it: another figure is told, the same is not", () => {
    const same = bookOf([0.11, 0.03, ""]);
    expect(same.report.unchecked.map(uncheckedWords).join()).not.toContain("dish");
    const other = bookOf([0.51, 0.03, ""]);
    expect(other.report.unchecked.map(uncheckedWords)).toContain(
      "Not checked: Water % holds 0.51 %, and the dish weighed before and after heating comes to another figure (row 2).",
    );
  });

  it.each([
    ["Gas mL", [5, 7, 9]],
    ["Gas sample g", [20, 20.1, 19.9]],
    ["Gas temp C", [21, 22, 23]],
    ["Hydride gas kPa", [12, 9, 4]],
    ["Wasserstoff ml", [5, 7, 9]],
  ])("“%s” of a gas that water makes is taken for nothing else", (heading, figures) => {
    const [guess] = recogniseSheet(
      sheetOf([
        ["Lot", "Titre mL", "Blank mL", "KOH mol/L", "Acid value", heading],
        ...figures.map((each, at) => [`L${String(at)}`, 2.4 + at, 0.1, 0.1, 1.3 + at, each]),
      ]),
    );
    expect(guess?.columns[5]?.role).toBe("other");
  });
});
