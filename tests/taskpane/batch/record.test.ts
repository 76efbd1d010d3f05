import { describe, expect, it } from "vitest";
import { atOdds, recordOf } from "../../../src/taskpane/batch/record";
import { routeOf } from "../../../src/taskpane/batch/route-of";
import type { RecordOutcome } from "../../../src/workbook/planning/plan";
import { but, seen, whole } from "./slate";

const today = "2026-09-30";

describe("the row of a batch", () => {
  it("holds what was decided, with the lot as the table has it", () => {
    const record = recordOf(seen(but({ lots: ["41"] })), today);
    expect(record).toMatchObject({ date: 46_295, batch: "B-1", unit: "l", base: "KOH" });
    expect(record?.charge.toString()).toBe("0.765");
    expect(record?.lots.map(({ lot }) => lot)).toEqual([41]);
  });

  it("holds any number of lots, each with its part of the amount", () => {
    const three = but({ lots: ["A", "B", "C"], shares: { A: "80", B: "12.5" } });
    const { lots } = recordOf(seen(three), today) ?? { lots: [] };
    expect(lots.map(({ lot, amount, unit }) => [lot, amount.toString(), unit])).toEqual([
      ["A", "80", "l"],
      ["B", "12.5", "l"],
      ["C", "7.5", "l"],
    ]);
  });

  it("is not made above the limit", () => {
    expect(recordOf(seen(but({ lots: ["C"] })), today)).toBeUndefined();
  });

  it("has a temperature only where a volume was measured", () => {
    const typed = { temperature: "45" };
    expect(recordOf(seen(but({ typed })), today)?.temperature?.toString()).toBe("45");
    const weighed = seen(but({ typed, picked: { unit: "kg" } }));
    expect(recordOf(weighed, today)?.temperature).toBeUndefined();
  });

  it("has the water where it was measured, and its route names it", () => {
    const dry = seen(whole);
    expect(recordOf(dry, today)?.water).toBeUndefined();
    expect(routeOf(dry)).toMatch(/; water not measured\.$/);
    // Ma 1998: above 0.06 % a base batch suffers.
    const wet = seen(but({ typed: { water: "0.09" } }));
    expect(recordOf(wet, today)?.water?.toString()).toBe("0.09");
    expect(routeOf(wet)).toMatch(/; water 0\.09 % is above 0\.06 %: dry the oil first\.$/);
  });

  it("is not made while the water is typed wrong", () => {
    const wrong = seen(but({ typed: { water: "120" } }));
    expect(recordOf(wrong, today)).toBeUndefined();
    expect(wrong.wants.map(({ step }) => step)).toEqual(["oil"]);
  });

  it("is held against the pane's own figure once it is written", () => {
    const outcome = (found: unknown): RecordOutcome =>
      ({ kind: "recorded", results: { "Catalyst g": found } }) as unknown as RecordOutcome;
    // By hand: 91.5 x (5 / 56.1 x 56.1053 + 7.65) / 0.9.
    const right = (91.5 * ((5 / 56.1) * 56.1053 + 7.65)) / 0.9;
    expect(atOdds(outcome(right), seen(whole))).toEqual([]);
    expect(atOdds(outcome(1200), seen(whole))[0]).toContain("The row shows 1200 g of lye");
    expect(atOdds(outcome({ error: "#VALUE!" }), seen(whole))[0]).toContain("#VALUE!");
  });
});
