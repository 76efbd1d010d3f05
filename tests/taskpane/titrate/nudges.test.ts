import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { aboutOil } from "../../../src/taskpane/titrate/nudges/oil";
import { aboutBlank, aboutTitres, oneMore } from "../../../src/taskpane/titrate/nudges/readings";
import type { Nudge, Seen } from "../../../src/taskpane/titrate/nudges/nudge";
import { aboutTitrant } from "../../../src/taskpane/titrate/nudges/titrant";
import { but, type Slip, viewOfSlip } from "./slip";

const said = (nudges: (seen: Seen) => Nudge[], slip: Slip, about: string): string | undefined =>
  nudges(viewOfSlip(slip)).find((nudge) => nudge.about === about)?.sentence;

describe("what is said of a density that is typed", () => {
  const odd = (density: string, sample: "by volume" | "weighed" = "by volume") =>
    said(aboutOil, { typed: { density }, picked: { sample } }, "density");

  it("asks about one that no common oil has, and says what usually made it", () => {
    expect(odd("0.8")).toContain("0.8 kg/L: oils lie between 0.87 and 0.94 at 20 °C");
    expect(odd("0.8")).toContain("a bubble, or a drop left in the syringe");
    expect(odd("0.98")).toContain("water");
  });

  it("asks about castor oil only where it is heavy, as castor oil is, and nothing of what is weighed", () => {
    expect(odd("0.8")).not.toContain("castor");
    expect(odd("0.96")).toContain("castor oil?");
    expect(odd("0.8", "weighed")).toBeUndefined();
  });

  it("says nothing of those that oils have", () => {
    for (const density of ["0.87", "0.915", "0.94", ""]) expect(odd(density)).toBeUndefined();
  });
});

describe("what is said of a titrant", () => {
  const age = (checkedOn: string, slip: Slip = {}) =>
    said(aboutTitrant, { ...slip, checkedOn }, "age");

  it("says the strength in the other ways: 0.1 mol/L of KOH is 5.61 g in a litre", () => {
    const slip: Slip = { typed: { certified: "0.1" }, picked: { way: "certified" } };
    expect(said(aboutTitrant, slip, "strength")).toBe(
      "That is 0.1000 mol/L, or 5.61 g of pure KOH in a litre (0.561 % w/v).",
    );
  });

  it("counts the days since it was checked, and no number of them makes it old", () => {
    const slip: Slip = { picked: { way: "phthalate" } };
    const words = "kept in Titrants, 3 checks make a line that says when it is old";
    expect(age("2026-09-30", slip)).toBe(`Checked today; ${words}.`);
    expect(age("2026-09-22", slip)).toBe(`Checked 8 days ago; ${words}.`);
    expect(age("2026-08-30", slip)).toBe(`Checked 31 days ago; ${words}.`);
  });

  it("asks for it at once where the titrant was only weighed", () => {
    expect(age("", { picked: { way: "weighed" } })).toContain("KHP");
    expect(age("", { picked: { way: "phthalate" } })).toBeUndefined();
    expect(age("", { picked: { way: "certified" } })).toBeUndefined();
  });

  // By hand, % of the strength: 196 sqrt(0.01^2/6/0.51^2 + 2 x 0.05^2/6/25^2 + 0.0005^2/3) = 1.586;
  // on 0.001 g 0.281; for 5.1 g and 0.01 g the same 0.281.
  it("says what a check against KHP reaches, from the balance and the mass typed", () => {
    const check = (typed: Record<string, string>) =>
      said(
        aboutTitrant,
        {
          typed: { phthalateTitre: "25", titreStep: "0.05", ...typed },
          picked: { way: "phthalate" },
        },
        "doubt",
      );
    expect(check({ phthalateMass: "0.51", massStep: "0.01" })).toContain(
      "With 0.51 g of KHP it is ±1.6 % on a balance that shows 0.01 g, at best.",
    );
    expect(check({ phthalateMass: "5.1", massStep: "0.01" })).toContain("±0.28 % on");
    expect(check({ phthalateMass: "0.51", massStep: "" })).toContain(
      "±1.6 % on a balance that shows 0.01 g, ±0.28 % on a balance that shows 0.001 g",
    );
    expect(check({ phthalateMass: "0.51" })).not.toContain("0.2 %");
  });

  it("minds a day in the future", () => {
    expect(age("2026-10-01", { picked: { way: "phthalate" } })).toContain("in the future");
    expect(age("2026-09-30", { picked: { way: "phthalate" } })).not.toContain("in the future");
  });

  it("says of the batch's own lye what cancels and what the charge still needs", () => {
    const slip: Slip = {
      typed: { gramsPerLitre: "1" },
      picked: { way: "gramsPerLitre", assay: "same-lye" },
    };
    expect(said(aboutTitrant, slip, "acid part")).toContain("needs no assay, it cancels");
    expect(said(aboutTitrant, slip, "acid part")).toContain("1 mL on 1 mL of oil means 1 g");
    // 7 / 0.90 = 7.78, 7 / 0.85 = 8.24 (facts of the trade: 7.778 and 8.235)
    expect(said(aboutTitrant, slip, "charge")).toContain("7.8 g/L of a 90 % lye and 8.2 g/L");
    const methoxide: Slip = { ...slip, picked: { ...slip.picked, base: "NaOCH3" } };
    expect(said(aboutTitrant, methoxide, "charge")).toContain("pure grams divided by it");
  });
});

describe("what is said of the sample", () => {
  it.each([
    ["used cooking oil", "10", true],
    ["used cooking oil", "14.9", true],
    ["used cooking oil", "15", false],
    ["used cooking oil", "", false],
    ["canola", "10", false],
  ])("warns that %s at %s may be half solid: %s", (oil, temperature, isWarned) => {
    const slip: Slip = {
      typed: { volume: "10", temperature },
      picked: { oil, sample: "by volume" },
    };
    const words = said(aboutOil, slip, "cold") ?? "";
    expect(words.includes("may be half solid")).toBe(isWarned);
  });

  it("suggests the mass whose titre is twenty steps: 1.0 mL at 1 % of 0.1 mol/L is 2.82 g", () => {
    const slip = but({ typed: { certified: "0.1", expected: "1", mass: "" } });
    expect(said(aboutOil, slip, "sample")).toBe(
      "If the oil has about 1 % FFA, weigh 2.9 g or more.",
    );
  });

  it("minds a sample that is smaller", () => {
    const slip = but({ typed: { certified: "0.1", expected: "1", mass: "1" } });
    expect(said(aboutOil, slip, "sample")).toContain("1 g is little for 1 % FFA");
  });

  it("minds mass and volume more than 5 % apart, and not less", () => {
    // 10 mL of the usual oil at 20 C is 9.15 g; 5 % more is 9.6075 g
    const at = (mass: string) =>
      said(aboutOil, but({ typed: { mass, volume: "10" }, picked: { oil: "" } }), "disagree");
    expect(at("9.60")).toBeUndefined();
    expect(at("9.61")).toContain("5.0 % apart");
    expect(at("8.69")).toContain("5.0 % apart");
    expect(at("8.70")).toBeUndefined();
  });

  it("compares the samples' own masses with the volume as well", () => {
    const slip = but({
      typed: { volume: "10" },
      picked: { masses: "own", oil: "" },
      titres: [
        ["2.4", "9.2"],
        ["2.5", "10.4"],
      ],
    });
    expect(said(aboutOil, slip, "disagree")).toContain("10.4 g was weighed");
  });

  it("refuses the volume of a fat that is solid there", () => {
    const slip = but({ typed: { volume: "5" }, picked: { sample: "by volume", oil: "tallow" } });
    expect(said(aboutOil, slip, "solid")).toContain("tallow is solid at 20 C");
  });
});

describe("what is said of blank and titres", () => {
  it("warns of a blank above a third of the titre, with its share, and not of a third", () => {
    const at = (blank: string) =>
      said(aboutBlank, but({ titres: ["0.60", "0.60"], blanks: [blank] }), "blank");
    expect(at("0.20")).toBeUndefined();
    expect(at("0.25")).toBe(
      "The blank is 42 % of the titre: a larger sample would make the result surer.",
    );
  });

  // By hand: 0.15 / (0.65/3) = 0.692; 0.40 of 0.60 is two thirds.
  it("takes the mean titre for the share, and from two thirds on has more oil weighed", () => {
    const at = (blank: string, ...titres: string[]) =>
      said(aboutBlank, but({ titres, blanks: [blank] }), "blank");
    const again = "of the titre: weigh more oil and titrate again.";
    expect(at("0.15", "0.20", "0.25", "0.20")).toBe(`The blank is 69 % ${again}`);
    expect(at("0.40", "0.60", "0.60")).toBe(`The blank is 67 % ${again}`);
    expect(at("0.39", "0.60", "0.60")).toContain("a larger sample");
  });

  // By hand: 0.0667 mL net on 10 g would need 150 g; 56.4 g at 0.1 x 56.4/150 = 0.0376 mol/L gives 1 mL.
  it("never asks for more oil than a method takes, and names the weaker titrant", () => {
    const slip = but({
      titres: ["0.20", "0.25", "0.20"],
      blanks: ["0.15"],
      typed: { certified: "0.1" },
    });
    expect(said(aboutTitres, slip, "few steps")).toBe(
      "For a titre of 20 steps of 0.05 mL: weigh 56 g, and use a titrant of 0.037 mol/L or weaker.",
    );
    const none = but({ titres: ["0.20", "0.20", "0.21"], blanks: ["0.20"] });
    expect(said(aboutTitres, none, "few steps") ?? "").not.toMatch(/titrant of/);
  });

  it("asks for no more than the largest portion, whatever the oil, the strength and the step", () => {
    const any = fc.record({
      certified: fc.double({ min: 0.005, max: 2, noNaN: true }).map((x) => x.toPrecision(3)),
      expected: fc.double({ min: 0.001, max: 90, noNaN: true }).map((x) => x.toPrecision(2)),
      titreStep: fc.constantFrom("0.01", "0.05", "0.1", "0.5"),
    });
    fc.assert(
      fc.property(any, (typed) => {
        const words = said(aboutOil, but({ typed: { ...typed, mass: "" } }), "sample") ?? "";
        const [, grams = ""] = /weigh ([\d.]+) g/.exec(words) ?? [];
        expect(Number(grams), words).toBeGreaterThan(0);
        expect(Number(grams), words).toBeLessThanOrEqual(56.4);
        expect(words.length).toBeLessThanOrEqual(200);
      }),
    );
  });

  it("says when the titre is less than twenty steps long, and what would be enough", () => {
    const slip = but({ titres: ["0.55", "0.65"], blanks: ["0.10"], typed: { certified: "0.1" } });
    // 0.50 mL is 10 steps of 0.05; twice the sample, 20 g, brings 20
    expect(said(aboutTitres, slip, "few steps")).toBe(
      "The titre is only 10 steps of 0.05 mL long: weigh 20 g or more.",
    );
  });

  it("says the figures contradict each other when a titre is below its blank", () => {
    const slip = but({ titres: ["0.10", "0.20"], blanks: ["0.15"] });
    expect(said(aboutTitres, slip, "contradiction")).toBe(
      "The titre of 0.1 mL is lower than the blank: one of the two is wrong. Titrate both again.",
    );
    const both = but({ titres: ["0.10", "0.10"], blanks: ["0.15"] });
    const words = said(aboutTitres, both, "contradiction");
    expect(words).toBe(
      "The titre is lower than the blank: one of the two is wrong. Titrate both again.",
    );
    const wants = viewOfSlip(both).wants.map(({ sentence }) => sentence);
    expect(wants).toContain(words);
    expect(wants.join()).not.toContain("cell");
  });

  it("names the titres that have no mass of their own", () => {
    const slip = but({ picked: { masses: "own" }, titres: [["2.4", "10"], "2.5"] });
    expect(said(aboutTitres, slip, "own mass")).toContain("Titre 2");
  });
});

describe("whether one more titre is worth the work", () => {
  const more = (...titres: string[]) => said(oneMore, but({ titres }), "one more");

  it("is said of two that agree, with what it would bring", () => {
    // t falls from 12.7 to 4.30 and sqrt n rises
    expect(more("2.40", "2.50")).toMatch(
      /^One more titre would bring the ± from .* to about .* % FFA\.$/,
    );
  });

  it("is not spoken of once three agree, or the ± is a fiftieth of the result", () => {
    expect(more("2.40", "2.50", "2.45")).toBeUndefined();
    expect(more("9.45", "9.45")).toBeUndefined();
  });

  it("is left to the verdict where there is one titre, or titres do not agree", () => {
    expect(more("2.40")).toBeUndefined();
    expect(more("2.30", "2.30", "5.30")).toBeUndefined();
    expect(more("2.40", "2.45", "2.45", "2.40", "3.90")).toBeUndefined();
  });

  it("cannot be had in a row of six", () => {
    expect(more("2.4", "2.4", "2.4", "2.5", "2.4", "2.4")).toContain("Six titres");
  });
});

describe("what is said of two titres of which one is ten times the other", () => {
  const slipped = (...titres: string[]) => said(aboutTitres, but({ titres }), "slipped");

  it("names both figures and asks", () => {
    expect(slipped("24.5", "2.45")).toContain(
      "24.50 mL is about ten times 2.45 mL: a slipped point?",
    );
  });

  it("says nothing of two that agree", () => {
    expect(slipped("2.40", "2.45")).toBeUndefined();
  });
});

describe("what is said of cold oil whose temperature was read in °F", () => {
  it("says it in °F, as it was typed, and not in the digits of °C that it comes to", () => {
    const cold = said(
      aboutOil,
      but({
        typed: { temperature: "40 F" },
        picked: { sample: "by volume", oil: "used cooking oil" },
      }),
      "cold",
    );
    expect(cold).toContain("at 40 °F may be half solid");
  });
});
