import { describe, expect, it } from "vitest";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { logbookOf, rowOf, usual } from "./rows";

/** The same without its answer: nobody said whether the charge is of pure lye. */
function open(rows: readonly ReturnType<typeof rowOf>[]) {
  const { mapping, cells } = logbookOf(rows);
  const columns = mapping.columns.map(({ column, heading, role, unit }) => ({
    column,
    heading,
    role,
    unit,
  }));
  return recheckAtOnce([{ mapping: { ...mapping, columns }, cells }]);
}

const last = <T>(row: readonly T[], value: T): T[] => [...row.slice(0, -1), value];

describe("a question that nobody answered", () => {
  // By hand, 109.8 kg of acid value 2.7007: 296.5 g for the acid, 840 g for the reaction, lye of 90 %.
  // Pure: (296.5 + 840) / 0.9 = 1263 g. As weighed: 296.5 / 0.9 + 840 = 1170 g (1169.5).
  const pure = last(rowOf(usual), 1263);
  const asWeighed = last(rowOf(usual), 1170);

  it("leaves a row right that fits with one answer or the other", () => {
    const { findings, taken } = open([pure, asWeighed]);
    expect(findings).toEqual([]);
    expect(taken.join("; ")).toContain("the base charge pure in one reading and as weighed in the");
  });

  it("gives both figures, and no effect, for a row that fits with neither", () => {
    const { findings } = open([pure, asWeighed, last(rowOf(usual), 1500)]);
    expect(findings.map(({ row, held, effect }) => [row, held, effect])).toEqual([
      [3, "1500", undefined],
    ]);
    expect(findings[0]?.should.split(" or ").sort()).toEqual(["1170", "1263"]);
  });

  it("is answered by rows that fit with one answer where none speaks for the other", () => {
    const [found] = open([pure, pure, pure, pure, last(rowOf(usual), 1500)]).findings;
    expect(found?.should).toBe("1263");
    expect(Math.abs((found?.effect?.grams ?? 0) - 237)).toBeLessThan(1);
  });
});
