import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { isCoarse, notRising, probeFound } from "../../../src/taskpane/probe/found";
import { readPairs } from "../../../src/taskpane/probe/read-pairs";

/** Harvey, Modern Analytical Chemistry, Table 9.5: mL of 0.100 mol/L and pH. */
const harvey: readonly (readonly [string, string])[] = [
  ["0", "2.89"],
  ["2", "4.52"],
  ["4", "5.06"],
  ["10", "5.89"],
  ["12", "6.15"],
  ["14", "6.63"],
  ["15", "7.08"],
  ["15.5", "7.75"],
  ["15.6", "8.40"],
  ["15.7", "9.29"],
  ["15.8", "10.07"],
  ["16", "10.65"],
  ["17", "11.34"],
  ["18", "11.63"],
  ["20", "12.00"],
  ["24", "12.41"],
];
const comma = (text: string): string => text.replace(".", ",");
const written = (between: string, how = (text: string) => text): string =>
  harvey.map((pair) => pair.map(how).join(between)).join("\n");

describe("readings of a probe as people write them", () => {
  it.each([
    ["pasted from a sheet", written("\t"), "."],
    ["pasted with decimal commas", written("\t", comma), ","],
    ["a CSV file with a heading", `mL,pH\r\n${written(",")}\r\n`, "."],
    ["a CSV of a program with decimal commas", `Volume;pH\n${written(";", comma)}`, ","],
    ["typed with spaces", written(" "), "."],
    ["typed with a comma and a space", written(", "), "."],
  ] as const)("%s: sixteen lines give 15.67 mL, the point at 0 left out", (_, text, mark) => {
    const { points, faults, zeros } = readPairs(text, mark);
    expect(faults).toEqual([]);
    expect([points.length, zeros]).toEqual([15, 1]);
    const sure = probeFound(points);
    if (sure === undefined || isProblem(sure)) throw new Error("no end point");
    expect(sure.found.volume.toNumber()).toBeCloseTo(15.668571428571429, 12);
    // the steepest step goes from 15.6 to 15.7
    expect(sure.halfStep).toBeCloseTo(0.05, 12);
    expect(isCoarse(sure)).toBe(false);
  });

  it("names a line that is no pair, and keeps the others", () => {
    const { points, faults } = readPairs("1 7\ntwo 8\n3\n4 9 9\n5 -120", ".");
    expect(points.map(([volume]) => volume.toNumber())).toEqual([1, 5]);
    expect(faults).toEqual([
      'Line 2 is no pair of mL and reading, such as 12.5 7.04: "two 8".',
      'Line 3 is no pair of mL and reading, such as 12.5 7.04: "3".',
      'Line 4 is no pair of mL and reading, such as 12.5 7.04: "4 9 9".',
    ]);
    expect(readPairs("two 8", ",").faults[0]).toContain("such as 12,5 7,04:");
  });

  it("takes the long decimals of a logger", () => {
    const { points, faults } = readPairs(
      "0.10000000149011612;7.039999961853027\n0.200000002980232;7.03999999523",
      ".",
    );
    expect(faults).toEqual([]);
    const near = points.flatMap(([volume, reading]) => [volume.toNumber(), reading.toNumber()]);
    for (const [at, figure] of [0.1, 7.04, 0.2, 7.04].entries()) {
      expect(near[at]).toBeCloseTo(figure, 7);
    }
  });

  it("says what no probe shows, and what it may: a pH from 0 to 14, mV far to either side", () => {
    expect(readPairs("1 6.1\n2 6.3\n3 88\n4 -1\n5 6.4", ".").faults).toEqual([
      "Line 3 has pH 88: a pH lies from 0 to 14.",
      "Line 4 has pH -1: a pH lies from 0 to 14.",
    ]);
    expect(readPairs("1 120\n2 60\n3 9.5\n4 -6000", ".").faults).toEqual([
      "Line 4 has -6000 mV: a probe shows -2000 to 2000 mV.",
    ]);
    expect(readPairs("1001 7\n2 8", ".").faults).toEqual([
      "Line 1 has 1001 mL: a volume lies above 0, up to 1000 mL.",
    ]);
  });

  it("says nothing of nothing, and what is lacking of little", () => {
    expect(probeFound(readPairs(" \n", ".").points)).toBeUndefined();
    expect(isProblem(probeFound(readPairs("1 7\n2 8", ".").points))).toBe(true);
  });

  it("calls a step of a millilitre coarse", () => {
    const sure = probeFound(readPairs("1 7\n2 7.5\n3 8.5\n4 10.5\n5 11.5\n6 12", ".").points);
    if (sure === undefined || isProblem(sure)) throw new Error("no end point");
    expect(isCoarse(sure)).toBe(true);
  });

  it("names the two lines that give one volume, or go back", () => {
    expect(notRising(readPairs("1 5.0\n2 6.0\n2 7.0\n3 9.0", "."))).toBe(
      "Lines 2 and 3 both say 2 mL. Take one of them out, or put its volume right.",
    );
    expect(notRising(readPairs("1 5.0\n2.6 6.0\n2.4 7.0\n3 9.0", "."))).toBe(
      "Lines 2 and 3 go back from 2.6 to 2.4 mL. Type the mL given in all, in their order.",
    );
    expect(notRising(readPairs("1 5.0\n2 6.0\n3 9.0", "."))).toBeUndefined();
  });
});
