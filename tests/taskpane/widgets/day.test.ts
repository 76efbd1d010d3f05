import { describe, expect, it } from "vitest";
import { dayNumber, daysBetween, localDay, sheetDay } from "../../../src/taskpane/widgets/day";

describe("days", () => {
  it("are counted as a spreadsheet counts them: 4 May 2026 is day 46146", () => {
    expect(sheetDay("2026-05-04")).toBe(46_146);
    expect(sheetDay("1970-01-01")).toBe(25_569);
  });

  it("lie a whole number apart, over months and leap years", () => {
    expect(daysBetween("2026-09-22", "2026-09-30")).toBe(8);
    expect(daysBetween("2024-02-28", "2024-03-01")).toBe(2);
    expect(daysBetween("2026-10-01", "2026-09-30")).toBe(-1);
  });

  it("are only those of the calendar", () => {
    for (const text of ["", "2026-02-30", "2026-13-01", "30.9.2026", "2026-9-30"]) {
      expect(dayNumber(text)).toBeUndefined();
    }
    expect(daysBetween("", "2026-09-30")).toBeUndefined();
  });

  it("are those of the place one is in", () => {
    expect(localDay(new Date(2026, 8, 3, 23, 59))).toBe("2026-09-03");
  });
});
