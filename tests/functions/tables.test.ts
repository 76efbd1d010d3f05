/**
 * Every table that spills, typed by hand: its words, figures and units. 100 kg of triolein oil at
 * 5.61 mg KOH/g (10 mol of acid), KOH of 90 %, 1 % of base, 6 to 1; molar masses from the CIAAW weights.
 */
import { describe, expect, it } from "vitest";
import { call } from "./outcome";

type Cell = string | number | boolean;

const rowsOf = (id: string, ...given: unknown[]): Cell[][] => {
  const seen = call(id, ...given);
  if ("error" in seen) throw new Error(seen.message);
  return seen.value as Cell[][];
};

/** Each figure to eleven digits, each word as it is. */
const rounded = (rows: readonly Cell[][]): Cell[][] =>
  rows.map((row) =>
    row.map((cell) => (typeof cell === "number" ? Number(cell.toPrecision(11)) : cell)),
  );

const caution = "Caution";

describe("the table of", () => {
  it("BATCH", () => {
    const rows = rounded(rowsOf("BATCH", 100, 5.61, "KOH", 90, 1));
    expect(rows.slice(0, 18)).toEqual([
      ["Oil", 100, "kg"],
      ["Acid value", 5.61, "mg KOH/g"],
      ["FFA as oleic", 2.82, "%"],
      // 0.0971753 kmol of triolein are left; six moles of methanol for each
      ["Methanol", 26.660315604, "L at 20 C"],
      ["Methanol", 21.098973769, "kg"],
      ["Methanol, of the oil's volume", 24.394188778, "% at 20 C"],
      ["Base for the acid, pure", 561.053, "g"],
      ["Base for the reaction, pure", 1000, "g"],
      ["Catalyst, as weighed", 1734.5033333, "g"],
      ["Catalyst, as weighed, per litre of oil", 15.8707055, "g/L at 20 C"],
      ["Methanol brought by a methoxide solution", 0, "L at 20 C"],
      ["Methanol still to add", 26.660315604, "L at 20 C"],
      ["Soap from the acid", 3.205583, "kg"],
      ["Water from the acid", 0.18015, "kg"],
      ["Water from base and methanol", 0.3210926597, "kg"],
      ["Water in the lye, at most", 0.17345033333, "kg"],
      ["Biodiesel, at most", 97.617817671, "kg"],
      ["Glycerol, at most", 10.106989214, "kg"],
    ]);
    expect(rows.slice(18).map(([label, , unit]) => [label, unit])).toEqual([
      ["Route", ""],
      [caution, ""],
      [caution, ""],
      [caution, ""],
      [caution, ""],
    ]);
  });

  it("BATCH of a fat that is solid at 20 C, whose litres are those of where it is liquid", () => {
    const units = rowsOf("BATCH", 100, 5.61, "KOH", 90, 1, 6, "coconut").map((row) => row[2]);
    expect([units[5], units[9], units[3]]).toEqual(["% at 25 C", "g/L at 25 C", "L at 20 C"]);
  });

  it("PRETREATMENT", () => {
    const rows = rounded(rowsOf("PRETREATMENT", 100, 5.61, "KOH", 90, 98));
    expect(rows.slice(0, 6)).toEqual([
      ["Free fatty acid", 2.82468, "kg"],
      ["Methanol", 6.35553, "kg"],
      ["Methanol", 8.0307429871, "L at 20 C"],
      ["Sulfuric acid, as weighed", 0.14411632653, "kg"],
      ["Sulfuric acid, as weighed", 78.324090506, "mL"],
      ["Base that would cancel all of that acid, as weighed, at most", 179.55007976, "g"],
    ]);
    expect(rows.slice(6).map(([label, , unit]) => [label, unit])).toEqual([
      ["Then", ""],
      [caution, ""],
      [caution, ""],
      [caution, ""],
      [caution, ""],
    ]);
  });

  it("WATERBALANCE", () => {
    // 20 kg of methanol with 0.1 % of water in it
    expect(rounded(rowsOf("WATERBALANCE", 100, 0.05, 5.61, "KOH", 90, 1, 20, 0.1))).toEqual([
      ["Water in the oil", 0.05, "kg"],
      ["Water from the acid", 0.18015, "kg"],
      ["Water from base and methanol", 0.3210926597, "kg"],
      ["Water in the lye, at most", 0.17345033333, "kg"],
      ["Water in the methanol", 0.02, "kg"],
      ["All water", 0.74469299303, "kg"],
      ["All water, of the oil's mass", 0.74469299303, "%"],
      [
        "In words",
        "0.745 % of the oil's mass at most; most of it by base and methanol: a methoxide makes none.",
        "",
      ],
    ]);
  });

  it("WHATIF, its corner with the unit of the amounts", () => {
    const rows = rounded(rowsOf("WHATIF", [[100, 50]], "us_gal", [[5.61]], "KOH", 90, 1));
    // 3.785411784 x 0.915 = 3.46365178236 kg to a US gallon
    expect(rows).toEqual([
      ["Catalyst, g as weighed: US gal of oil down, acid value mg KOH/g across", 5.61],
      [100, 6007.715562],
      [50, 3003.857781],
    ]);
  });

  it("SPREAD, the record's own rows in words where there is none", () => {
    const found = rowsOf("SPREAD", [[2.3, 2.4, 2.5]]);
    expect(found.map(([label]) => label)).toEqual([
      "readings",
      "mean, mL",
      "standard deviation, mL",
      "relative standard deviation, %",
      "range, mL",
      "half-width of the 95 % interval, scatter alone, mL",
      "reading tested, mL",
      "G: how far off, in standard deviations",
      "G with graduation: with the step that was read",
      "critical G: above it a reading is suspect",
      "p, two-sided: how often chance alone goes so far",
      "verdict",
      "farthest from the mean, mL",
      "explained by the usual scatter, mL",
      "degrees of freedom of the usual scatter",
    ]);
    const known = rowsOf("SPREAD", [[2.3, 2.4, 2.5]], null, null, null, null, 0.05, 20);
    expect([known[12]?.[1], known[14]?.[1]]).toEqual([0.1, 20]);
    const single = rowsOf("SPREAD", [[2.3]], null, null, null, null, 0.05, 20);
    expect(single.slice(12).map(([, figure]) => figure)).toEqual(["no test", "no test", 20]);
    const two = rowsOf("SPREAD", [[2.3, 2.5]], null, null, null, null, 0.05, 20);
    // by hand: t(0.025 / 2, 20) = 2.423 x 0.05 / sqrt 2
    expect([two[12]?.[1], Number(two[13]?.[1]).toFixed(4), two[14]?.[1]]).toEqual([
      0.1,
      "0.0857",
      20,
    ]);
    expect(found.slice(12).map(([, words]) => words)).toEqual(
      Array<string>(3).fill("no usual scatter given"),
    );
  });

  it("BUDGET, with all that a bench may tell", () => {
    const found = rowsOf(
      "BUDGET",
      [[2.4, 2.5]],
      [[0.1, 0.15]],
      0.1,
      [[7.05, 7.1]],
      0.05,
      0.01,
      1,
      2,
      "oleic",
      1,
      0.04,
      20,
    );
    expect(found.map(([source, , unit]) => [source, unit])).toEqual([
      ["source", "unit"],
      ["titre scatter", "mL"],
      ["blank scatter", "mL"],
      ["titre reading", "mL"],
      ["blank reading", "mL"],
      ["titrant", "mol/L"],
      ["weighing", "g"],
      ["sample by volume", "g"],
      ["burette", "mL"],
      ["scatter part, and its t", "t for 22 degrees of freedom"],
      ["rest, and its factor", "normal"],
      ["FFA, and its expanded uncertainty", "%"],
      ["the step that would lower it most", ""],
    ]);
    const two = rowsOf("BUDGET", [[2.4, 2.5]], null, 0.1, [[7.05]], 0.05, 0.01);
    expect(two.find(([source]) => source === "scatter part, and its t")?.[2]).toBe(
      "t for 1 degree of freedom",
    );
    expect(found[0]?.slice(3)).toEqual([
      "standard uncertainty",
      "as % FFA",
      "share of ± squared, %",
    ]);
  });

  it("STRENGTHON and CONTROL", () => {
    const strength = rowsOf("STRENGTHON", [[1, 11, 21]], [[0.1, 0.101, 0.1025]], 31);
    expect(strength.map(([label, , unit]) => [label, unit])).toEqual([
      ["strength on that day", "mol/L"],
      ["± (95 %)", "mol/L"],
      ["change in 30 days", "%"],
      ["scatter about the line", "mol/L"],
      ["verdict", ""],
    ]);
    // by hand: moving ranges of 1, times half the root of pi
    const control = rounded(rowsOf("CONTROL", [[1, 2, 1, 2, 1, 2]]));
    expect(control.slice(0, 8)).toEqual([
      ["values", 6],
      ["centre", 1.5],
      ["mean moving range", 1],
      ["sigma", 0.88622692545],
      ["lower action limit", -1.1586807764],
      ["lower warning limit", -0.27245385091],
      ["upper warning limit", 3.2724538509],
      ["upper action limit", 4.1586807764],
    ]);
    expect(control.slice(8).map(([label]) => label)).toEqual([
      "weighted mean now",
      "its lower limit",
      "its upper limit",
      "verdict",
    ]);
  });

  it("CONTROLFLAGS, its gaps where those of the values are", () => {
    // beyond the limits of the first ten, behind a gap
    const steady = [0.1, 0.12, 0.11, 0.1, 0.12, 0.11, 0.1, 0.12, 0.11, 0.1];
    const calm = Array<string>(10).fill("in control");
    expect(rowsOf("CONTROLFLAGS", [["", ...steady, "", 0.3]], 10, 0.01)).toEqual([
      ["", ...calm, "", "beyond limits"],
    ]);
  });
});
