/** Figures typed for a whole logbook: each with its unit, and pure or as weighed. Through the reducer. */
import { describe, expect, it } from "vitest";
import { factOf } from "../../../src/taskpane/logbook/typed-figures";
import { judge } from "../../../src/taskpane/widgets/judged";
import { lacks } from "../../../src/adopt/recognising/lacks";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { Pane, sheetOf } from "./typed-pane";

const round = (value: number, places = 0): number => Number(value.toFixed(places));
const day = 46_000;

/** The commonest hobby way: 1 g of flake in a litre, 1 mL of oil, grams for a litre read off the burette. */
const titres = Array.from({ length: 18 }, (_, at) => round(1.4 + 0.13 * at, 2));
const hobby = (charge: number): LogbookValue[][] => [
  ["Date", "Drum", "Titration ml", "Oil litres", "NaOH g"],
  ...titres.map((titre, at) => {
    const litres = 120 + 7 * at;
    return [day + at, `SW-${String(at)}`, titre, litres, round((titre + charge) * litres)];
  }),
];

const hobbyPane = (rows = hobby(5)): Pane =>
  new Pane(sheetOf(rows, ["yyyy-mm-dd"])).act(
    { do: "typed", figure: "strength", value: "1" },
    { do: "typed", figure: "strength", unit: "g/L" },
    { do: "typed", figure: "strength", basis: "as weighed" },
    { do: "constant", role: "titrantBase", value: "NaOH" },
    { do: "constant", role: "sampleVolume", value: "1" },
    { do: "constant", role: "base", value: "NaOH" },
    { do: "constant", role: "blank", value: "0" },
  );

describe("a logbook kept in the commonest hobby way", () => {
  it.each(["", "97", "90"])("is right, whatever the assay: %s", (assay) => {
    const pane = hobbyPane().act(
      { do: "typed", figure: "charge", value: "5" },
      { do: "typed", figure: "charge", unit: "g/L" },
      { do: "typed", figure: "charge", basis: "as weighed" },
      { do: "typed", figure: "assay", value: assay },
    );
    const report = pane.recheck();
    expect(report.findings).toEqual([]);
    expect(report.unchecked).toEqual([]);
    expect([report.rows, report.figures]).toEqual([18, 18]);
  });

  it("needs no assay where the lye is one and as weighed", () => {
    const pane = hobbyPane().act({ do: "typed", figure: "charge", value: "5" });
    const asked = () => lacks(pane.mapping).map(({ sentence }) => sentence);
    expect(asked()).toContain("In which unit is the base charge?");
    pane.act({ do: "typed", figure: "charge", unit: "g/L" });
    expect(asked()).toContain("Is the base charge of pure lye, or as weighed?");
    pane.act({ do: "typed", figure: "charge", basis: "as weighed" });
    expect(asked()).toEqual([]);
  });

  it("still shows a dose that is wrong", () => {
    const rows = hobby(5);
    // 5.4 g/L where 3.9 + 5 belong.
    (rows[3] as LogbookValue[])[4] = 800;
    const charge = { value: "5", unit: "g/L", basis: "as weighed" } as const;
    const pane = hobbyPane(rows).act({ do: "typed", figure: "charge", ...charge });
    // By hand: (1.66 + 5) x 134 L = 892 g.
    expect(pane.recheck().findings.map(({ address, should }) => [address, should])).toEqual([
      ["E4", "892"],
    ]);
  });
});

describe("a base charge that is typed", () => {
  it("of 5 is used in no unit before one is said, and accuses nobody", () => {
    const pane = hobbyPane().act({ do: "typed", figure: "charge", value: "5" });
    const report = pane.recheck();
    expect([report.findings, report.figures]).toEqual([[], 0]);
  });

  it("of 5 % is refused with what it may be, and not used", () => {
    const pane = hobbyPane().act(
      { do: "typed", figure: "charge", value: "5" },
      { do: "typed", figure: "charge", unit: "%" },
      { do: "typed", figure: "charge", basis: "pure" },
      { do: "typed", figure: "assay", value: "97" },
    );
    expect(judge("5", factOf("charge", "%"), ".")).toMatchObject({ kind: "wrong" });
    const report = pane.recheck();
    expect([report.findings, report.figures]).toEqual([[], 0]);
  });

  it("keeps what was typed when its unit changes", () => {
    const pane = hobbyPane().act(
      { do: "typed", figure: "strength", value: "0,1" },
      { do: "typed", figure: "strength", unit: "mol/L" },
    );
    expect(pane.mapping.constants.filter(({ role }) => role === "molarity")).toHaveLength(1);
    expect(pane.mapping.constants.filter(({ role }) => role === "strength")).toEqual([]);
    pane.act({ do: "typed", figure: "strength", unit: "% w/v" });
    expect(pane.mapping.constants.find(({ role }) => role === "strength")).toMatchObject({
      unit: "% w/v",
      from: { value: "0,1" },
    });
  });
});

/** mol/L, g/L and % of one titrant, and pure or as weighed: one logbook, worked out here. */
const lab = (strength: number, pureShare: number, charge: (litres: number) => number) => [
  ["Date", "Lot", "T1 ml", "T2 ml", "Blank ml", "Sample g", "AV", "Oil (l)", "KOH total (g)"],
  ...Array.from({ length: 8 }, (_, at) => {
    const [one, two] = [3.1 + at / 5, 3.14 + at / 5].map((each) => round(each, 2)) as [
      number,
      number,
    ];
    const litres = 90 + 10 * at;
    const value = (56.1 * strength * ((one + two) / 2 - 0.2)) / 9.6;
    const acid = ((litres * 0.915 * value) / 56.1) * 56.1053;
    const dose = (acid + charge(litres)) / pureShare;
    return [day + at, `L${String(at)}`, one, two, 0.2, 9.6, round(value, 2), litres, round(dose)];
  }),
];

describe("a typed strength and charge", () => {
  it.each([
    ["0.1", "mol/L", undefined, 0.1],
    ["5.61053", "g/L", "pure", 0.1],
    ["0.561053", "% w/v", "pure", 0.1],
    ["6.2339", "g/L", "as weighed", 0.1],
  ] as const)("of %s %s %s is 0.1 mol/L", (value, unit, basis, molar) => {
    const rows = lab(molar, 0.9, (litres) => litres * 7);
    const pane = new Pane(sheetOf(rows, ["yyyy-mm-dd"])).act(
      { do: "typed", figure: "strength", value, unit, ...(basis ? { basis } : {}) },
      { do: "constant", role: "titrantBase", value: "KOH" },
      { do: "constant", role: "base", value: "KOH" },
      { do: "typed", figure: "assay", value: "90" },
      { do: "typed", figure: "charge", value: "7", unit: "g/L", basis: "pure" },
    );
    const report = pane.recheck();
    expect([report.findings, report.rows, report.figures]).toEqual([[], 8, 16]);
  });

  it.each([
    ["7", "g/L", "pure", (litres: number) => litres * 7],
    ["7", "g/L", "as weighed", (litres: number) => litres * 7 * 0.9],
    ["0.8", "%", "pure", (litres: number) => litres * 9.15 * 0.8],
    ["0,8", "%", "as weighed", (litres: number) => litres * 9.15 * 0.8 * 0.9],
  ] as const)("charge of %s %s %s is right where the rows were worked out so", (...of) => {
    const [value, unit, basis, pure] = of;
    const pane = new Pane(sheetOf(lab(0.1, 0.9, pure), ["yyyy-mm-dd"])).act(
      { do: "typed", figure: "strength", value: "0.1", unit: "mol/L" },
      { do: "constant", role: "base", value: "KOH" },
      { do: "typed", figure: "assay", value: "90" },
      { do: "typed", figure: "charge", value, unit, basis },
    );
    const report = pane.recheck();
    expect([report.findings, report.figures]).toEqual([[], 16]);
  });
});

describe("a column in percent format", () => {
  it("is read as its cells show it: 0.008 with a % is 0.8 %, 0.9 with a % is 90 %", () => {
    const rows = lab(0.1, 0.9, (litres) => litres * 9.15 * 0.8).map((row, at) => [
      ...row,
      ...(at === 0 ? ["Base charge", "Assay"] : [0.008, 0.9]),
    ]);
    const formats = ["yyyy-mm-dd", "", "", "", "", "", "", "", "", "0.0%", "0%"];
    const pane = new Pane(sheetOf(rows, formats)).act(
      { do: "typed", figure: "strength", value: "0.1", unit: "mol/L" },
      { do: "constant", role: "base", value: "KOH" },
    );
    const report = pane.recheck();
    expect([report.findings, report.figures]).toEqual([[], 16]);
  });
});
