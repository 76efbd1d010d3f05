/** Two causes that give a figure to its digits: both are named, and neither is told for sure. Worked out by hand. */
import { describe, expect, it } from "vitest";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { causeWords } from "../../../src/adopt/recheck/reporting/cause-words";
import { effectWords } from "../../../src/taskpane/logbook/effect-words";
import { bareLogbook, typedConstants } from "./bare-logbook";

/**
 * 10 mL of oil of 0.915 kg/L, 0.1 mol/L, a net titre of 5 mL: 5.61 x 5 / 9.15 is 3.066 mg KOH/g. With 1 for
 * the density 5.61 x 5 / 10, with the blank of 0.425 mL off twice 5.61 x 4.575 / 9.15: 2.805 both times.
 */
const book = (more: readonly (readonly [number, number, number])[] = []) =>
  bareLogbook(
    [
      ["lot", undefined],
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleVolume", "mL"],
      ["molarity", "mol/L"],
      ["acidValue", "mg KOH/g"],
    ],
    [[5.425, 0.425, 2.805] as const, ...more].map(([titre, blank, value], at) => [
      `L${String(at)}`,
      titre,
      blank,
      10,
      0.1,
      value,
    ]),
  );

describe("an acid value that a density of 1 and a blank taken off twice give alike", () => {
  it("is told as either, with what it should be and no more", () => {
    const [found, ...others] = recheckAtOnce([book()]).findings;
    expect(others).toEqual([]);
    expect(found && causeWords(found)).toBe(
      "Density taken as 1, or blank subtracted twice: both give this figure",
    );
    expect(found?.should).toBe("3.066");
    expect(found?.formula).toBe("");
  });

  it("is told by the column's own mistake where other rows show which it is", () => {
    // Nets of 4 and 6 mL with 1 for the density: 2.244 and 3.366; with the blank off twice 2.33 and 3.56.
    const report = recheckAtOnce([
      book([
        [4.2, 0.2, 2.244],
        [6.2, 0.2, 3.366],
      ]),
    ]);
    expect(report.findings.map(causeWords)).toEqual(
      report.findings.map(() => "Density taken as 1"),
    );
    expect(report.findings.length).toBe(3);
  });

  it("tells what it did to the dose where both come to the same", () => {
    const plain = book();
    const withDose = {
      ...plain,
      mapping: {
        ...plain.mapping,
        constants: typedConstants([
          ["base", "KOH"],
          ["assay", "100", "%"],
          ["baseCharge", "7", "g/L"],
          ["oilAmount", "100", "kg"],
        ]),
      },
    };
    const [found] = recheckAtOnce([withDose]).findings;
    // both make 26 g too little of it: 0.261 mg KOH/g in 100 kg, for the acid alone
    expect(found && effectWords(found)).toMatch(/26 g too little lye/);
  });
});
