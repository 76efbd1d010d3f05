/** A blank of 0 is not filled in, unless no row holds another: then the solvent took nothing. */
import { describe, expect, it } from "vitest";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { uncheckedWords } from "../../../src/adopt/recheck/reporting/unchecked";
import { bareLogbook } from "./bare-logbook";

/** 10 g and 0.1 mol/L: % FFA is 0.282 times the net titre. */
function recheck(blanks: readonly LogbookValue[], means?: "day" | "above" | "none" | "unknown") {
  const { mapping, cells } = bareLogbook(
    [
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleMass", "g"],
      ["molarity", "mol/L"],
      ["ffa", "%"],
    ],
    blanks.map((blank) => [5, blank, 10, 0.1, 1.41]),
  );
  const answers = means ? [{ ask: "blank" as const, means }] : [];
  return recheckAtOnce([{ mapping: { ...mapping, answers }, cells }]);
}

describe("a blank of 0", () => {
  it.each([0, "0", "0.0", "0 mL"])(
    "%j among blanks that were read is said, its row not checked",
    (zero) => {
      for (const means of [undefined, "unknown", "day", "above"] as const) {
        const { rows, findings, unchecked } = recheck([0.2, zero, 0.2], means);
        expect([rows, findings.map(({ row }) => row)]).toEqual([2, [1, 3]]);
        expect(unchecked.map(uncheckedWords)).toEqual([
          "Not checked: its blank is 0, and a 0 counts as not filled in (row 3).",
        ]);
      }
    },
  );

  it("in every row says that the solvent took nothing", () => {
    const { rows, findings, unchecked } = recheck([0, 0, 0]);
    expect([rows, findings, unchecked]).toEqual([3, [], []]);
  });

  it("is nothing to subtract where an empty one was said to be that", () => {
    const { rows, findings, unchecked } = recheck([0.2, 0, ""], "none");
    expect([rows, findings.map(({ row }) => row), unchecked]).toEqual([3, [1], []]);
  });

  it("is not a word for a neutralised solvent, which is read as it is written", () => {
    const { rows, findings, unchecked } = recheck([0.2, "neutralised"]);
    expect([rows, findings.map(({ row }) => row), unchecked]).toEqual([2, [1], []]);
  });
});
