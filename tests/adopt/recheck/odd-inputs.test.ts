/** A reading ten times off the other rows', and acid above the limit: no word of them is an order to add lye. */
import { describe, expect, it } from "vitest";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { aboveLimitWords } from "../../../src/adopt/recheck/reporting/above-limit";
import { effectWords } from "../../../src/taskpane/logbook/effect-words";
import { isAllRight } from "../../../src/taskpane/logbook/listed";
import { bareLogbook, typedConstants } from "./bare-logbook";

const roles = [
  ["titre", "mL"],
  ["blank", "mL"],
  ["sampleMass", "g"],
  ["molarity", "mol/L"],
  ["ffa", "%"],
  ["oilAmount", "kg"],
  ["catalyst", "g"],
] as const;
const at = (role: RoleId): number => roles.findIndex(([each]) => each === role);

/** 90 % KOH and 0.765 % of it pure for the reaction; the acid's lye mole for mole. */
function row(titre: number): number[] {
  const moles = ((titre - 0.1) * 0.1) / 10;
  const ffa = Number(((moles * 282) / 10).toFixed(2));
  const grams = (91.5 * (moles * 56.1053 + 7.65)) / 0.9;
  return [titre, 0.1, 10, 0.1, ffa, 91.5, Math.round(grams)];
}

function recheck(rows: readonly number[][]) {
  const { mapping, cells } = bareLogbook(roles, rows);
  const constants = typedConstants([
    ["assay", "90", "%"],
    ["base", "KOH", undefined],
    ["baseCharge", "0.765", "%"],
  ]);
  return recheckAtOnce([{ mapping: { ...mapping, constants }, cells }]);
}

const honest = [2.6, 3.1, 2.2, 3.4, 2.8].map(row);

describe("a reading that is ten times off from the other rows'", () => {
  it.each([
    ["sampleMass", 0.1, "The 1 g in sampleMass may be the slip"],
    ["sampleMass", 10, "The 100 g in sampleMass may be the slip"],
    ["molarity", 10, "The 1 mol/L in molarity may be the slip"],
    ["titre", 10, "The 26 mL in titre may be the slip"],
    ["blank", 10, "The 1 mL in blank may be the slip"],
    ["oilAmount", 0.1, "The 9.15 kg in oilAmount may be the slip"],
  ] as const)("%s times %d is named, and nobody is told to add lye", (role, factor, words) => {
    const slipped = row(2.6);
    slipped[at(role)] = (slipped[at(role)] ?? 0) * factor;
    const { findings } = recheck([...honest, slipped]);
    expect(findings.length).toBeGreaterThan(0);
    for (const each of findings) {
      expect(each.row).toBe(6);
      expect(each.effect).toBeUndefined();
      expect(effectWords(each)).toContain(words);
      expect(effectWords(each)).not.toMatch(/too (?:little|much)/);
    }
  });

  it("is not looked for where the reading is like the others and the result is off", () => {
    const wrong = row(2.6);
    wrong[at("catalyst")] = (wrong[at("catalyst")] ?? 0) * 10;
    const { findings } = recheck([...honest, wrong]);
    expect(findings.map(({ mistake, oddInput }) => [mistake, oddInput])).toEqual([
      ["decimal-slip", undefined],
    ]);
    expect(effectWords(findings[0] as (typeof findings)[0])).toMatch(/g too much lye\.$/);
  });

  it("is no slip where the other rows tell of no usual one", () => {
    const small = row(2.6);
    small[at("sampleMass")] = 1;
    expect(
      recheck([row(2.6), small]).findings.every(({ oddInput }) => oddInput === undefined),
    ).toBe(true);
  });
});

describe("acid above the limit of a plain base batch", () => {
  it("takes the tick from right figures, and says the row", () => {
    // 24.9 mL of 0.1 mol/L on 10 g: 7.02 % as oleic (282 g/mol).
    const report = recheck([...honest, row(25)]);
    expect(report.findings).toEqual([]);
    expect(isAllRight(report)).toBe(false);
    expect(report.aboveLimit.map(aboveLimitWords)).toEqual([
      "7.02 % FFA is above the limit of 5 %: lye alone will not do, blend it down or pretreat it (row 7).",
    ]);
  });

  it("of several rows is one sentence", () => {
    const report = recheck([row(25), ...honest, row(20.1)]);
    expect(report.aboveLimit.map(aboveLimitWords)).toEqual([
      "5.64 to 7.02 % FFA is above the limit of 5 %: lye alone will not do, blend it down or pretreat it (rows 2 and 8).",
    ]);
  });

  it("is not said below it, nor of a row without a dose", () => {
    expect(recheck(honest).aboveLimit).toEqual([]);
    expect(isAllRight(recheck(honest))).toBe(true);
    const noDose = row(25);
    noDose[at("catalyst")] = 0;
    expect(recheck([...honest, noDose]).aboveLimit).toEqual([]);
  });
});
