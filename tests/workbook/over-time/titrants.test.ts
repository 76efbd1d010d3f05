import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { serialDay } from "../../../src/sheet/serial-days";
import { dayInWords } from "../../../src/workbook/over-time/day-words";
import {
  type TitrantCheck,
  titrantHistories,
} from "../../../src/workbook/over-time/titrant-history";
import { titrantLine } from "../../../src/workbook/over-time/titrant-line";
import { readTitrants } from "../../../src/workbook/planning/read-titrants";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { openMemory } from "../../host/open-memory";

const check = (day: number | undefined, strength: number, more: Partial<TitrantCheck> = {}) => ({
  titrant: "K-5",
  base: "KOH",
  howKnown: "KHP",
  strength,
  percent: 0.4,
  day,
  ...more,
});

const lineOf = (checks: readonly TitrantCheck[], day: number) => {
  const [history] = titrantHistories(checks);
  if (!history) throw new Error("no history");
  return titrantLine(history, day);
};

describe("the histories of titrants", () => {
  it("are one for each bottle of each base, the one checked last first, checks in the order of time", () => {
    const found = titrantHistories([
      check(200, 0.099),
      check(100, 0.1),
      check(300, 0.1, { titrant: "N-1", base: "NaOH" }),
      check(150, 0.0995, { titrant: " k-5 ", base: "caustic potash" }),
      check(120, 0.1, { base: "NaOH" }),
    ]);
    expect(found.map(({ titrant, base }) => [titrant, base])).toEqual([
      ["N-1", "NaOH"],
      ["K-5", "KOH"],
      ["K-5", "NaOH"],
    ]);
    expect(found[1]?.checks.map(({ day }) => day)).toEqual([100, 150, 200]);
  });

  it("leave out rows without a date, and say how many", () => {
    const [history] = titrantHistories([check(undefined, 0.2), check(100, 0.1)]);
    expect(history).toMatchObject({ undated: 1, checks: [{ strength: 0.1 }] });
    expect(titrantHistories([check(undefined, 0.2)])).toEqual([]);
  });
});

describe("the line of a titrant", () => {
  // By hand: 0.1000, 0.0998, 0.0996 on days 0, 10, 20: a slope of -0.00002 a day and no scatter, so
  // that 1 % (0.001) is lost on day 50.
  const straight = [check(1000, 0.1), check(1010, 0.0998), check(1020, 0.0996)];

  it("says what it has lost since its first check, and its last day within 1 %", () => {
    const line = lineOf(straight, 1030);
    if (isProblem(line)) throw new Error("no line");
    expect(line.strength).toBeCloseTo(0.0994, 12);
    expect(line.since).toBeCloseTo(-0.6, 9);
    expect(line).toMatchObject({ isChanging: true, within: 1050, isOld: false, checks: 3 });
  });

  it("is old the day after, and not on that day", () => {
    const at = (day: number) => {
      const line = lineOf(straight, day);
      return isProblem(line) ? undefined : line.isOld;
    };
    expect([at(1050), at(1051)]).toEqual([false, true]);
  });

  it("is never old where it does not change, however many days have gone by", () => {
    // By hand: the slope of 0.1000 0.0999 0.1000 is none.
    const line = lineOf([check(1000, 0.1), check(1010, 0.0999), check(1020, 0.1)], 9000);
    expect(line).toMatchObject({ isChanging: false, within: undefined, isOld: false });
  });

  it("needs three checks, on more than one day", () => {
    expect(isProblem(lineOf(straight.slice(0, 2), 1030))).toBe(true);
    expect(isProblem(lineOf([check(5, 0.1), check(5, 0.1), check(5, 0.1)], 6))).toBe(true);
  });
});

describe("the table Titrants, read", () => {
  it("gives each row that names a bottle and has a strength", async () => {
    const rows = await readTitrants(openMemory(sampleLogbook()));
    if (!Array.isArray(rows)) throw new Error("no rows");
    expect(rows).toHaveLength(9);
    expect(rows[8]).toEqual({
      titrant: "K-6",
      base: "KOH",
      howKnown: "weighing",
      strength: 0.1003,
      percent: 1,
      day: serialDay(2026, 9, 28),
    });
  });

  it("is undefined where there is no such table", async () => {
    expect(await readTitrants(openMemory())).toBeUndefined();
  });
});

describe("a day in words", () => {
  it("is the day of the calendar", () => {
    expect(dayInWords(serialDay(2026, 10, 27))).toBe("27 Oct 2026");
    expect(dayInWords(serialDay(2024, 2, 29) + 0.75)).toBe("29 Feb 2024");
  });
});
