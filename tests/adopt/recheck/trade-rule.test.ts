/** Logbooks that titrate 1 mL of oil with 1 g/L of lye: grams of lye for a litre, read off the burette. */
import { describe, expect, it } from "vitest";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { bareLogbook } from "./bare-logbook";

const columns: readonly (readonly [RoleId, string | undefined])[] = [
  ["lot", undefined],
  ["titrantBase", undefined],
  ["strength", "g/L"],
  ["sampleVolume", "mL"],
  ["titre", "mL"],
  ["blank", "mL"],
  ["ffa", "%"],
  ["oilAmount", "L"],
  ["base", undefined],
  ["assay", "%"],
  ["baseCharge", "g/L"],
  ["catalystRate", "g/L"],
  ["catalyst", "g"],
];

const koh = 56.1053;
const naoh = 39.99676928;

const book = (rows: readonly (readonly LogbookValue[])[]): Logbook => bareLogbook(columns, rows);

/** By the identity of the trade rule: 1 mL of 1 g/L on 1 mL of oil is 1 g of the same pure lye a litre. */
function row(
  titrant: "KOH" | "NaOH",
  strength: number,
  wrong: { molarity?: number; density?: number; base?: number } = {},
): LogbookValue[] {
  const titre = 2.4;
  const blank = 0.1;
  const net = titre - blank;
  const own = titrant === "KOH" ? koh : naoh;
  const c = wrong.molarity ?? strength / own;
  const ffa = (c * net * 282) / (10 * (wrong.density ?? 0.915));
  const acid = (net * strength * (wrong.base ?? koh)) / own;
  const rate = (acid + 7) / 0.9;
  return [
    "SW-4",
    titrant,
    strength,
    1,
    titre,
    blank,
    Number(ffa.toFixed(3)),
    80,
    "KOH",
    90,
    7,
    Number(rate.toFixed(2)),
    Number((rate * 80).toFixed(0)),
  ];
}

const found = (...rows: LogbookValue[][]) =>
  recheckAtOnce([book(rows)]).findings.map(({ mistake, role }) => [mistake, role]);

describe("a logbook of the trade rule", () => {
  it("is right when titrant and dose are the same lye, or when the other base was allowed for", () => {
    expect(found(row("KOH", 1), row("NaOH", 1), row("KOH", 2))).toEqual([]);
  });

  it("is right as well when the titrant was weighed from the same lye: the assay cancels", () => {
    const same = row("KOH", 1);
    same[11] = Number((2.3 + 7 / 0.9).toFixed(2));
    same[12] = Number(((2.3 + 7 / 0.9) * 80).toFixed(0));
    expect(found(same)).toEqual([]);
  });

  it("shows a titre with NaOH used as a dose of KOH", () => {
    expect(found(row("NaOH", 1, { base: naoh }))).toEqual([["other-base", "catalystRate"]]);
  });

  it("shows 0.1 % taken for 0.1 mol/L", () => {
    expect(found(row("KOH", 1, { molarity: 0.1 }))).toEqual([["percent-as-molarity", "ffa"]]);
    expect(found(row("NaOH", 1, { molarity: 0.1 }))).toEqual([["percent-as-molarity", "ffa"]]);
  });

  it("shows a sample of 1 mL taken for 1 g", () => {
    expect(found(row("NaOH", 1, { density: 1 }))).toEqual([["density-as-one", "ffa"]]);
  });
});
