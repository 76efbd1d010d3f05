import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { call } from "../../functions/outcome";

type Row = [label: string, amount: number | string, unit: string];

/** The rows of a spilled answer; a refusal fails the test. */
function rowsOf(id: string, ...given: unknown[]): Row[] {
  const seen = call(id, ...given);
  if ("error" in seen) throw new Error(seen.message);
  return seen.value as Row[];
}
const amount = (rows: Row[], label: string, unit?: string): number => {
  const row = rows.find(([name, , of]) => name === label && (unit === undefined || of === unit));
  if (row === undefined) throw new Error(`no row ${label}`);
  return Number(row[1]);
};
const near = (got: number, expected: number, relative: number): void => {
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));
};

describe("BATCH", () => {
  it("has its rows in the order of the interface", () => {
    const labels = rowsOf("BATCH", 91.5, 5, "KOH", 90, 0.765).map(([label]) => label);
    expect(labels.slice(0, 20)).toEqual([
      "Oil",
      "Acid value",
      "FFA as oleic",
      "Methanol",
      "Methanol",
      "Methanol, of the oil's volume",
      "Base for the acid, pure",
      "Base for the reaction, pure",
      "Catalyst, as weighed",
      "Catalyst, as weighed, per litre of oil",
      "Methanol brought by a methoxide solution",
      "Methanol still to add",
      "Soap from the acid",
      "Water from the acid",
      "Water from base and methanol",
      "Water in the lye, at most",
      "Biodiesel, at most",
      "Glycerol, at most",
      "Route",
      "Caution",
    ]);
  });

  // Triolein 885.453, methanol 32.042, methyl oleate 296.495, glycerol 92.094 g/mol: by hand.
  it("makes 100.4554 kg of ester and 10.4008 kg of glycerol from 100 kg of triolein, less its acid", () => {
    const rows = rowsOf("BATCH", 100, 0.0001, "NaOH", 100, 1);
    near(amount(rows, "Biodiesel, at most"), 100.4554, 1e-5);
    near(amount(rows, "Glycerol, at most"), 10.4008, 1e-5);
  });

  it("closes its mass balance: triglyceride and methanol in, ester and glycerol out", () => {
    const oils = fc.constantFrom(null, "canola", "tallow", "coconut", 0.92);
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 9.9, noNaN: true }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        oils,
        (av, kg, oil) => {
          const rows = rowsOf("BATCH", kg, av, "KOH", 100, 1, 3, oil);
          const triglyceride = kg * (1 - ((av / 56.1) * 282.468) / 1000);
          const methanol = amount(rows, "Methanol", "kg");
          const out = amount(rows, "Biodiesel, at most") + amount(rows, "Glycerol, at most");
          near(out, triglyceride + methanol, 1e-12);
        },
      ),
    );
  });

  it("closes the balance of the acid: acid and hydroxide in, soap and water out", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 9.9, noNaN: true }),
        fc.constantFrom("KOH", "NaOH"),
        (av, base) => {
          const rows = rowsOf("BATCH", 100, av, base, 100, 1);
          const acid = ((av / 56.1) * 282.468 * 100) / 1000;
          const alkali = amount(rows, "Base for the acid, pure") / 1000;
          const out = amount(rows, "Soap from the acid") + amount(rows, "Water from the acid");
          near(out, acid + alkali, 1e-12);
        },
      ),
    );
  });

  // 0.321093 g of water per g of KOH, 0.450411 per g of NaOH; by hand: 18.015 / M.
  it("counts the water that base and methanol make", () => {
    const water = (base: string) =>
      amount(rowsOf("BATCH", 100, 1, base, 100, 1), "Water from base and methanol");
    near(water("KOH"), 0.321093, 1e-5);
    near(water("NaOH"), 0.450411, 1e-5);
    expect(water("KOCH3")).toBe(0);
  });

  it("takes the methanol of a 30 % methoxide solution off what is still to add, and none of a solid's", () => {
    const rows = rowsOf("BATCH", 100, 1, "NaOCH3", 30, 0.5);
    const weighed = amount(rows, "Catalyst, as weighed");
    near(amount(rows, "Methanol brought by a methoxide solution"), (weighed * 0.7) / 791.4, 1e-12);
    near(
      amount(rows, "Methanol still to add"),
      amount(rows, "Methanol", "L at 20 C") - (weighed * 0.7) / 791.4,
      1e-12,
    );
    const solid = rowsOf("BATCH", 100, 1, "NaOCH3", 98, 0.5);
    expect(amount(solid, "Methanol brought by a methoxide solution")).toBe(0);
  });

  // By hand: 3 x 32.042 / 885.453 of 100 kg is 10.86 kg; a 10 % solution of 3 kg brings 27 kg.
  it("has no methanol left to add where the solution brings more than is needed", () => {
    const rows = rowsOf("BATCH", 100, 0.0001, "NaOCH3", 10, 3, 3);
    near(amount(rows, "Methanol", "kg"), (3 * 32.042 * 100) / 885.453, 1e-5);
    near(amount(rows, "Methanol brought by a methoxide solution"), 27 / 0.7914, 1e-5);
    expect(amount(rows, "Methanol still to add")).toBe(0);
  });

  it("gives the same catalyst as CATALYST and no dose above the limit", () => {
    const rows = rowsOf("BATCH", 91.5, 5, "KOH", 90, 0.765);
    expect({ value: amount(rows, "Catalyst, as weighed") }).toEqual(
      call("CATALYST", 91.5, 5, "KOH", 90, 0.765),
    );
    expect(call("BATCH", 91.5, 20, "KOH", 90, 0.765)).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("see ROUTE"),
    });
  });

  it.each([
    ["1 mL", 0.000915],
    ["100,000 L", 91_500],
  ])("answers for a batch of %s", (_, kg) => {
    const rows = rowsOf("BATCH", kg, 5, "KOH", 100, 0.765);
    near(amount(rows, "Catalyst, as weighed"), ((5 / 56.1) * 56.1053 + 7.65) * kg, 1e-12);
  });
});

describe("PRETREATMENT", () => {
  // 2.25 g of methanol and 0.05 g of acid per g of FFA: Canakci and Van Gerpen 2001, commonly cited.
  it("takes 2.25 kg of methanol and 0.05 kg of pure sulfuric acid for each kilogram of acid", () => {
    const rows = rowsOf("PRETREATMENT", 100, 19.8606, "KOH", 100, 98);
    const ffa = amount(rows, "Free fatty acid");
    near(ffa, 10, 1e-5);
    near(amount(rows, "Methanol", "kg"), 22.5, 1e-5);
    near(amount(rows, "Methanol", "L at 20 C"), 22.5 / 0.7914, 1e-5);
    near(amount(rows, "Sulfuric acid, as weighed", "kg"), 0.5 / 0.98, 1e-5);
    near(amount(rows, "Sulfuric acid, as weighed", "mL"), 500 / 0.98 / 1.84, 1e-5);
  });

  // Two moles of base to one of H2SO4: 572.08 g of KOH, 407.83 of NaOH, 550.86 of NaOCH3 to 500 g.
  it.each([
    ["KOH", 572.08],
    ["NaOH", 407.83],
    ["NaOCH3", 550.86],
  ])("needs two moles of %s to cancel the acid", (base, grams) => {
    const rows = rowsOf("PRETREATMENT", 100, 19.8606, base, 100);
    near(amount(rows, "Base that would cancel all of that acid, as weighed, at most"), grams, 2e-5);
  });

  it("says to titrate again, and carries the cautions", () => {
    const words = rowsOf("PRETREATMENT", 100, 20, "KOH", 90).map((row) => String(row[1]));
    expect(words.join(" ")).toContain("Titrate the treated oil again");
    expect(words.join(" ")).toContain("safety data sheet");
    expect(words.join(" ")).toContain("never acid onto lye");
  });
});

describe("ROUTE", () => {
  const at = (ffa: number, ...more: unknown[]): string => {
    const seen = call("ROUTE", (ffa * 561) / 282, ...more);
    return "value" in seen ? String(seen.value) : seen.message;
  };

  it.each([
    [0.49, "under 0.5 %", "as for refined oil"],
    [0.5, "0.5 to under 1 %", "the dose counts the acid"],
    [1, "1 to under 3 %", "more soap"],
    [2.9999, "1 to under 3 %", "more soap"],
    [3, "3 to under 5 %", "costs yield"],
    [5, "5 to under 15 %", "lye alone will not do"],
    [15, "15 % or more", "two acid steps"],
  ])("puts %d %% into its band, lower edge included", (ffa, band, advice) => {
    expect(at(ffa)).toContain(band);
    expect(at(ffa)).toContain(advice);
  });

  // a sheet may come to an edge less a rounding error, which counts as the edge
  it.each([
    [0.5, "FFA 0.5 % (0.5 to under 1 %)"],
    [1, "FFA 1 % (1 to under 3 %)"],
    [3, "FFA 3 % (3 to under 5 %)"],
    [5, "FFA 5 % (5 to under 15 %)"],
    [15, "FFA 15 % (15 % or more)"],
  ])("names one band at %d %%, and a billionth below it", (edge, said) => {
    for (const less of [0, 0.9e-9]) {
      expect(at(edge * (1 - less)).startsWith(`${said}: `), at(edge * (1 - less))).toBe(true);
    }
    expect(at(edge * (1 - 1.2e-9))).not.toContain(said);
  });

  it("moves the band of refusal with the limit", () => {
    expect(at(2.5, null, 2)).toContain("lye alone will not do");
    expect(at(7, null, 10)).toContain("costs yield");
    expect(at(16, null, 20)).toContain("two acid steps");
  });

  it("never shows a figure that its own band denies, and shows three digits where no band lies above", () => {
    expect(at(23.456)).toMatch(/^FFA 23\.5 % \(15 % or more\)/);
    expect(at(4.99996)).toMatch(/FFA 4\.9999\d* % \(3 to under 5 %\)/);
  });

  it("says whether water was measured, and warns above 0.06 %", () => {
    expect(at(1)).toContain("water not measured");
    expect(at(1, 0.06)).toContain("low enough");
    expect(at(1, 0.0601)).toContain("dry the oil first");
  });
});

describe("WHATIF", () => {
  it("has a row for each amount and a column for each acid value, each cell the CATALYST of its pair", () => {
    const amounts = [50, 100, 200];
    const acids = [1, 3, 5];
    const table = rowsOf("WHATIF", [amounts], "l", [acids], "KOH", 90, 0.765) as unknown[][];
    expect(table.map((row) => row.length)).toEqual([4, 4, 4, 4]);
    expect(table[0]?.slice(1)).toEqual(acids);
    for (const [down, litres] of amounts.entries()) {
      expect(table[down + 1]?.[0]).toBe(litres);
      for (const [across, av] of acids.entries()) {
        const one = call("CATALYST", litres * 0.915, av, "KOH", 90, 0.765);
        expect({ value: table[down + 1]?.[across + 1] }).toEqual(one);
      }
    }
  });

  it("says the limit in words where it is passed, and refuses more than a million kilograms", () => {
    const table = rowsOf("WHATIF", [[100]], "kg", [[5, 20]], "KOH", 90, 0.765) as unknown[][];
    expect(table[1]?.[2]).toContain("above the limit of 5 %");
    expect(call("WHATIF", [[1e6]], "us_gal", [[5]], "KOH", 90, 0.765)).toHaveProperty(
      "error",
      "#VALUE!",
    );
  });
});
