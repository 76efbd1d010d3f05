import { describe, expect, it } from "vitest";
import { effectWords } from "../../../src/taskpane/logbook/effect-words";
import {
  figureWords,
  isAllRight,
  remarksOn,
  summaryWords,
} from "../../../src/taskpane/logbook/listed";
import { kindLines } from "../../../src/taskpane/logbook/overview";
import type { RoleId } from "../../../src/adopt/recognising/roles";
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
  it("is by its cause, what did most to the lye first", () => {
    const rows = kindLines(report).map(({ findings }) => findings.map(({ row }) => row));
    expect(rows).toEqual([[3], [1], [4]]);
  });

  it("says in words what is held, what should be, and what it did", () => {
    const [assay, folk, acid] = report.findings;
    expect(summaryWords(report)).toBe(
      "Checked in 4 rows: 8 titres, 4 acid values, 4 figures in % FFA, 4 figures of the oil's mass, 4 figures of the lye for the acid and 4 doses. Not as they should be: 3 figures, in 3 rows. In the other row nothing wrong was found.",
    );
    expect(isAllRight(report)).toBe(false);
    expect(assay && figureWords(assay)).toBe("holds 1137 g, should be 1263 g");
    // By hand: 296.6 g short of 11.4 g, 316.8 g of 90 %; 96 % of 5.29 mol.
    expect(folk && effectWords(folk)).toBe(
      "317 g too little lye: 96 % of the acid (5.1 mol) was not neutralised.",
    );
    expect(acid && effectWords(acid)).toBe("The dose is not affected.");
  });

  it("says nothing of a dose that was not worked out", () => {
    const wrong = rowOf(usual, { ffa: { acid: 256 } });
    const words = (without: readonly RoleId[]) => {
      const found = recheckAtOnce([logbookOf([wrong], without)]);
      return { found, words: found.findings.map(effectWords).join() };
    };
    // No charge: the total cannot be worked out, though the lye for the acid can.
    const open = words(["baseCharge", "acidDose"]);
    expect(open.words).toMatch(/^The dose of this row was not checked\./);
    expect(open.words).not.toContain("not affected");
    expect(remarksOn(open.found).noDose).toBe(
      "No dose was checked: catalyst, since the base charge is not known.",
    );
    const none = words(["acidDose", "catalyst"]);
    expect(none.words).not.toContain("not affected");
    expect(remarksOn(none.found).noDose).toBe("No dose was checked: no column holds one.");
  });

  it("has no tick where no dose, or not every row, was checked", () => {
    const right = [rowOf(usual), rowOf(usual)];
    expect(isAllRight(recheckAtOnce([logbookOf(right)]))).toBe(true);
    expect(isAllRight(recheckAtOnce([logbookOf(right, ["acidDose", "catalyst"])]))).toBe(false);
    const unsaid = right.map((row) => row.map((each) => (each === 120 ? "3 drums" : each)));
    const report = recheckAtOnce([logbookOf(unsaid, ["oilMass"])]);
    expect(report.checked.dose).toBe(0);
    expect(isAllRight(report)).toBe(false);
    expect(remarksOn(report).noDose).toBe(
      'No dose was checked: how much one "drums" of oil is, is not said.',
    );
  });
});
