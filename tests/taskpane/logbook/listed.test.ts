import { describe, expect, it } from "vitest";
import {
  counted,
  effectWords,
  figureWords,
  listed,
  summaryWords,
} from "../../../src/taskpane/logbook/listed";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { logbookOf, rowOf, usual } from "../../adopt/recheck/rows";

const report = recheckAtOnce([
  logbookOf([
    rowOf(usual, { total: { assay: 1 } }),
    rowOf(usual),
    rowOf(usual, { acidDose: { byCharge: true }, total: { byCharge: true } }),
    rowOf(usual, { ffa: { acid: 256 } }),
  ]),
]);

describe("the list of findings", () => {
  it("comes in the order of rows, of effect or of mistakes, and of one kind alone", () => {
    const rows = (order: "row" | "effect" | "mistake") =>
      listed(report, "all", order).map(({ row }) => row);
    expect(rows("row")).toEqual([1, 3, 4]);
    expect(rows("effect")).toEqual([3, 1, 4]);
    expect(rows("mistake")).toEqual([4, 1, 3]);
    expect(listed(report, "other-acid", "row").map(({ row }) => row)).toEqual([4]);
    expect(counted(report).map(([, count]) => count)).toEqual([1, 1, 1]);
  });

  it("says in words what is held, what should be, and what it did", () => {
    const [assay, folk, acid] = listed(report, "all", "row");
    expect(summaryWords(report)).toMatch(
      /^4 rows, \d+ figures checked: 3 figures not as they should be, in 3 rows\.$/,
    );
    expect(assay && figureWords(assay)).toBe("holds 1137 g, should be 1263 g");
    // By hand: 296.6 g short of 11.4 g, 316.8 g of 90 %; 96 % of 5.29 mol.
    expect(folk && effectWords(folk)).toBe(
      "317 g of lye too little: 96 % of the acid (5.1 mol) finds no lye.",
    );
    expect(acid && effectWords(acid)).toBe("The dose is not affected.");
  });
});
