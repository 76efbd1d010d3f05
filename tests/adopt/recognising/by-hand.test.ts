/** What a person says of a logbook's rows and days by hand. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rowsText, rowsTyped, withLeft } from "../../../src/adopt/recognising/by-hand/left-out";
import { dateHabit } from "../../../src/adopt/recognising/date-habit";
import { mappingFrom } from "../../../src/adopt/recognising/mapping";
import { recogniseAt, recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { rememberedMapping, rememberedRows } from "../../../src/adopt/recognising/remembered";
import { dateFromText } from "../../../src/adopt/recognising/typed-date";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { Page } from "../strangers/page";

/** Titres of 2.5 mL at 0.1 mol/L and 10 g: (2.5 - 0.1) x 0.1 x 56.1 / 10 = 1.35 mg KOH/g; one row says 13.5. */
function book(days: readonly string[], top = 0) {
  const page = new Page();
  const headings = ["Date", "Lot", "Titre mL", "Blank mL", "Sample g", "KOH mol/L", "Acid value"];
  headings.forEach((each, at) => {
    page.put(top, at, each);
  });
  days.forEach((day, at) => {
    [day, `L${String(at)}`, 2.5, 0.1, 10, 0.1, at === 1 ? 13.5 : 1.35].forEach((value, column) => {
      page.put(top + 1 + at, column, value);
    });
  });
  return page.cells("Log");
}

const mappingOf = (cells: ReturnType<typeof book>) => {
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no table");
  return { guess, mapping: mappingFrom(guess) };
};

describe("rows left out by hand", () => {
  it("are written and read as the same rows, in rows or in columns", () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.nat(700), { maxLength: 30 }),
        fc.boolean(),
        (rows, isAcross) => {
          const sorted = [...rows].sort((one, other) => one - other);
          expect(rowsTyped(rowsText(sorted, isAcross), isAcross)).toEqual(sorted);
        },
      ),
    );
  });

  it("are read with any spaces and marks a person types, and no other words", () => {
    expect(rowsTyped(" 12 ; 15 - 17,20", false)).toEqual([11, 14, 15, 16, 19]);
    expect(rowsTyped("c, F–h", true)).toEqual([2, 5, 6, 7]);
    for (const wrong of ["row 12", "12-", "17-15", "0", "1.5"])
      expect(rowsTyped(wrong, false)).toBeUndefined();
  });

  it("are accused of nothing, while the others are checked as before, and are remembered", () => {
    const cells = book(["2026-03-01", "2026-03-02", "2026-03-03", "2026-03-04"]);
    const { guess, mapping } = mappingOf(cells);
    expect(recheckAtOnce([{ mapping, cells }]).findings.map(({ row }) => row)).toEqual([2]);
    const without = withLeft(mapping, [2]);
    const report = recheckAtOnce([{ mapping: without, cells }]);
    expect([report.findings, report.rows]).toEqual([[], 3]);
    expect(rememberedMapping(guess, rememberedRows(without))?.left).toEqual([2]);
    expect(withLeft(without, [])).toEqual(mapping);
  });
});

describe("headings that a person points at", () => {
  it("are read from that row, down to the last row of the table", () => {
    const cells = book(["2026-03-01", "2026-03-02", "2026-03-03"], 3);
    const { guess } = mappingOf(cells);
    const wrong = { ...guess.place, headingRow: 0, firstRow: 1, lastRow: 2 };
    const again = recogniseAt(cells, 3, wrong);
    expect(again.columns.map(({ role }) => role)).toEqual(guess.columns.map(({ role }) => role));
    expect([again.place.firstRow, again.place.lastRow]).toEqual([4, 6]);
  });
});

describe("days that may be two", () => {
  const habit = (days: readonly string[]) => {
    const cells = book(days);
    return dateHabit(mappingOf(cells).mapping, cells);
  };

  it("are read as the book's other days can only be read", () => {
    expect(habit(["03/04/2026", "03/25/2026", "04/02/2026"])).toEqual({ order: "month first" });
    expect(habit(["03/04/2026", "25/03/2026", "04/02/2026"])).toEqual({ order: "day first" });
    // 4 March and 3 April 2026 as the spreadsheet counts them, by its own calendar
    expect(dateFromText("03/04/2026", "month first")).toBe(46085);
    expect(dateFromText("03/04/2026", "day first")).toBe(46115);
  });

  it("are asked about where no other day tells, and not where none may be two", () => {
    expect(habit(["03/04/2026", "05/06/2026", "05/05/2026"]).asked).toBe("03/04/2026");
    expect(habit(["05/05/2026", "25/06/2026", "26/06/2026"]).asked).toBeUndefined();
  });
});
