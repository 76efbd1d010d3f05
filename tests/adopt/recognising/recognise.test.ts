import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { headingParts } from "../../../src/adopt/recognising/heading";
import { dateFromText } from "../../../src/adopt/recognising/typed-date";
import { numberFromText } from "../../../src/adopt/recognising/typed-number";
import { layoutCount, makeLogbook } from "./logbooks";
import { measure, measureOne } from "./measure";

const seeds = Array.from({ length: 10 }, (_, index) => index + 1);
const share = ({ right, columns }: { right: number; columns: number }): number => right / columns;

describe("the recogniser on twelve logbooks laid out differently", () => {
  it.each(
    Array.from(
      { length: layoutCount },
      (_, index) => [makeLogbook(index, "all", 1).name, index] as const,
    ),
  )("gets at least 95 in 100 columns right by itself: %s", (_, index) => {
    const all = seeds.map((seed) => measureOne(index, "all", seed));
    const right = all.reduce((sum, each) => sum + each.right, 0);
    const columns = all.reduce((sum, each) => sum + each.columns, 0);
    expect(right / columns).toBeGreaterThanOrEqual(0.95);
  });

  it("does as well on headings that were held out of its tuning", () => {
    const tuned = measure("tuned", seeds);
    const heldOut = measure("held out", seeds);
    const figure = (of: typeof tuned): string => `${String(of.right)} of ${String(of.columns)}`;
    console.log(
      `columns recognised: ${figure(tuned)} with tuned headings, ${figure(heldOut)} with headings held out`,
    );
    expect(share(tuned)).toBeGreaterThanOrEqual(0.95);
    expect(share(heldOut)).toBeGreaterThanOrEqual(0.95);
  });

  it("gives a reason for every column it claims to know", () => {
    for (let index = 0; index < layoutCount; index += 1) {
      for (const table of recogniseSheet(makeLogbook(index, "all", 3).cells)) {
        for (const column of table.columns) expect(column.reasons.length).toBeGreaterThan(0);
      }
    }
  });

  it("finds the figures that stand above a table with a label beside them", () => {
    const made = makeLogbook(1, "all", 1);
    const constants = recogniseSheet(made.cells)[0]?.constants ?? [];
    expect(constants.map(({ role, unit, row }) => [role, unit, row])).toEqual([
      ["molarity", "mol/L", 2],
      ["assay", "%", 3],
      ["baseCharge", "g/L", 4],
    ]);
  });

  it("is not held up by 10,000 rows", () => {
    const made = makeLogbook(0, "all", 1);
    const rows = <T>(of: readonly (readonly T[])[]) =>
      Array.from({ length: 10_000 }, (_, at) => of[at === 0 ? 0 : 1 + (at % 29)] as readonly T[]);
    const cells = {
      ...made.cells,
      values: rows(made.cells.values),
      formulas: rows(made.cells.formulas),
      formats: rows(made.cells.formats),
    };
    expect(recogniseSheet(cells)[0]?.place.lastRow).toBe(9_999);
  });
});

describe("a sheet that is no logbook", () => {
  it("is said to be none", () => {
    const values = [
      ["Name", "Phone", "Town"],
      ["Mate", 1234, "Quay"],
      ["Cook", 2345, "Slip"],
      ["Deck", 5, "Tide"],
    ];
    const fill = (what: string) => values.map((row) => row.map(() => what));
    const found = recogniseSheet({
      sheet: "Crew",
      row: 0,
      column: 0,
      values,
      formulas: fill(""),
      formats: fill("General"),
    });
    expect(found.every(({ isLogbook }) => !isLogbook)).toBe(true);
  });

  it("has no tables when it is empty", () => {
    expect(
      recogniseSheet({ sheet: "Empty", row: 0, column: 0, values: [], formulas: [], formats: [] }),
    ).toEqual([]);
  });
});

describe("a heading taken apart", () => {
  it.each([
    ["Titration #2 (mL)", "titration", "mL", 2],
    ["%FFA as oleic", "ffa as oleic", "%", undefined],
    ["ml KOH", "koh", "mL", undefined],
    ["Acid No mgKOH/g", "acid no", "mg KOH/g", undefined],
    ["Oil (US gal)", "oil", "US gal", undefined],
    ["Imp. gallons oil", "oil", "imp gal", undefined],
    ["Titrant % w/v", "titrant", "% w/v", undefined],
    ["1st titre", "titre", undefined, 1],
  ])("%s", (heading, words, unit, number) => {
    expect(headingParts(heading)).toMatchObject({ words, unit, number });
  });
});

describe("figures and days as people type them", () => {
  it.each([
    ["2,45", 2.45, 2],
    ["2.450", 2.45, 3],
    ["1.234,5", 1234.5, 1],
    ["1,234.5", 1234.5, 1],
    ["2.3 ml", 2.3, 1],
    ["~2.4", 2.4, 1],
  ])("%s is a number", (text, value, decimals) => {
    expect(numberFromText(text, "unsaid")).toEqual({ value, decimals });
  });

  it.each(["NQ-41", "", "ok", "4/5/26", "B-112", "1-2"])("%s is none", (text) => {
    expect(numberFromText(text, "unsaid")).toBeUndefined();
  });

  // 4 May 2026 is day 46146 of the spreadsheet's calendar (46023 is 1 January 2026).
  it.each([
    "2026-05-04",
    "04.05.2026",
    "4/5/26",
    "4 May 2026",
    "May 4, 2026",
    "Mon 4 May 26",
    "4-May-2026",
  ])("%s is a day", (text) => {
    expect(dateFromText(text)).toBe(46_146);
  });

  it.each(["2.45", "NQ-41", "13/13/2026", "may be", "12 drums 2026"])("%s is none", (text) => {
    expect(dateFromText(text)).toBeUndefined();
  });
});

describe("a logbook to which our columns were added", () => {
  it("keeps its own columns in their roles: they are the ones to be checked", () => {
    const headings = [
      "Drum",
      "T1 ml",
      "T2 ml",
      "Blank",
      "Sample g",
      "KOH N",
      "FFA %",
      "FFA as oleic, %",
    ];
    const row = ["NQ-1", 5.2, 5.3, 0.25, 10, 0.1, 1.41, 1.41];
    const formulas = [
      "",
      "",
      "",
      "",
      "",
      "",
      "",
      '=IF(COUNT(B2:C2)=0,"",TITRE.FFAFROMACIDVALUE(TITRE.MEANACIDVALUE(B2:C2,D2,F2,E2)))',
    ];
    const values = [headings, row, row, row];
    const none = headings.map(() => "");
    const [table] = recogniseSheet({
      sheet: "Log",
      row: 0,
      column: 0,
      values,
      formulas: [none, formulas, formulas, formulas],
      formats: values.map(() => headings.map(() => "General")),
    });
    expect(table?.columns.map(({ role }) => role).slice(-2)).toEqual(["ffa", "other"]);
  });
});
