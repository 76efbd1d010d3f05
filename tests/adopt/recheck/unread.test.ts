/** Words where figures belong: such a row is said to be unchecked, and no other row changes. */
import { describe, expect, it } from "vitest";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { rowsInWords, uncheckedWords } from "../../../src/adopt/recheck/reporting/unchecked";
import { columnLetter, logbookOf, rowOf, usual } from "./rows";

const at = (role: RoleId): number => columnLetter(role).charCodeAt(0) - 65;

function rowWith(role: RoleId, value: LogbookValue): (LogbookValue | undefined)[] {
  const row = rowOf(usual);
  row[at(role)] = value;
  return row;
}

describe("a cell with words where its figure belongs", () => {
  it.each(["2.90 bad", "5,20", "~5.2", "5.2?", "<5.2", "lost", "5.2 / 5.3"])(
    "%s as a titre: the row is not checked, and says so",
    (text) => {
      const report = recheckAtOnce([
        logbookOf([rowOf(usual), rowWith("titre", text), rowOf(usual)]),
      ]);
      expect(report.findings).toEqual([]);
      expect(report.rows).toBe(2);
      expect(report.unchecked.map(uncheckedWords)).toEqual([
        `Not checked: titre holds "${text}", which is no figure (row 3).`,
      ]);
    },
  );

  it.each(["5.2 g", "5,2 gr.", "5.2 %"])("%s says another unit than its column is in", (text) => {
    const report = recheckAtOnce([logbookOf([rowOf(usual), rowWith("titre", text)])]);
    expect([report.rows, report.findings]).toEqual([1, []]);
    expect(report.unchecked.map(uncheckedWords)).toEqual([
      `Not checked: titre holds "${text}", but its column is in mL: put one of the two right (row 3).`,
    ]);
  });

  it.each(["5.2", "5.2 mL", "5.20ml", " 5.20 "])("%s is a titre like any other", (text) => {
    const report = recheckAtOnce([logbookOf([rowWith("titre", text)])]);
    expect([report.rows, report.findings, report.unchecked]).toEqual([1, [], []]);
  });

  it.each(["-", "–", "n/a"])("%s says that no titre was read", (text) => {
    const row = rowOf({ ...usual, titres: [5.2, undefined, 5.25] });
    row[at("titre") + 1] = text;
    const report = recheckAtOnce([logbookOf([row])]);
    expect([report.rows, report.findings, report.unchecked]).toEqual([1, [], []]);
  });

  it("as a blank is not taken for no blank", () => {
    const report = recheckAtOnce([logbookOf([rowWith("blank", "0.25 old")])]);
    expect([report.rows, report.findings]).toEqual([0, []]);
    expect(report.unchecked).toHaveLength(1);
  });

  it("as an amount hides the doses of its row and nothing else", () => {
    const wrong = rowOf(usual, { ffa: { acid: 256 } });
    wrong[at("oilAmount")] = "about 120";
    wrong[at("oilMass")] = "";
    const report = recheckAtOnce([logbookOf([wrong])]);
    expect(report.findings.map(({ role }) => role)).toEqual(["ffa"]);
    expect(report.unchecked).toHaveLength(1);
  });

  it("as a result hides that figure alone; an error is named", () => {
    const report = recheckAtOnce([logbookOf([rowWith("ffa", { error: "#DIV/0!" })])]);
    expect(report.rows).toBe(1);
    expect(report.unchecked.map(({ why }) => why)).toEqual(["ffa holds #DIV/0!"]);
  });

  it("means nothing in a row without figures", () => {
    const empty = rowOf(usual).map(() => "" as LogbookValue);
    empty[at("ffa")] = { error: "#DIV/0!" };
    empty[at("titre")] = "new season";
    expect(recheckAtOnce([logbookOf([rowOf(usual), empty])]).unchecked).toEqual([]);
  });
});

describe("a ditto mark", () => {
  it.each(['"', "″", "do.", "ditto", "same", "''", "”"])("%s is the value above", (mark) => {
    const rows = [rowOf(usual), rowOf(usual), rowOf(usual)];
    for (const role of ["blank", "sampleMass", "base", "assay", "amountUnit"] as const)
      for (const row of rows.slice(1)) row[at(role)] = mark;
    const report = recheckAtOnce([logbookOf(rows)]);
    expect([report.rows, report.findings, report.unchecked]).toEqual([3, [], []]);
  });

  it("with nothing above it is no figure", () => {
    const report = recheckAtOnce([logbookOf([rowWith("blank", "ditto")])]);
    expect(report.unchecked).toHaveLength(1);
  });
});

describe("rows in words", () => {
  it.each([
    [[3], "row 4"],
    [[3, 4, 5, 8], "rows 4 to 6 and 9"],
    [[0, 2, 4, 6, 8, 10, 12], "rows 1, 3, 5, 7, 9, 11 and more"],
  ])("%j", (rows, words) => {
    expect(rowsInWords(rows)).toBe(words);
  });
});
