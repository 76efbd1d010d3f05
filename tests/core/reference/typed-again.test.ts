/**
 * Every table of the reference data a second time, typed by hand from its sources and not copied: a
 * slip of one digit in either shows. The sources stand beside the data in src/core/reference.
 */
import { describe, expect, it } from "vitest";
import { amountUnits, offeredUnits } from "../../../src/core/quantity/units";
import { atomicWeights } from "../../../src/core/reference/atomic-weights";
import { publishedCharges } from "../../../src/core/reference/base-charges";
import { bases } from "../../../src/core/reference/bases";
import { acidValueDefinition } from "../../../src/core/reference/compounds";
import * as compounds from "../../../src/core/reference/compounds";
import { fattyAcids } from "../../../src/core/reference/fatty-acids";
import { aboutSoap, fuelLimits } from "../../../src/core/reference/fuel-limits";
import { allowedWords, limits } from "../../../src/core/reference/limits";
import {
  methanolDensity,
  sulfuricAcidDensity,
  titrantExpansion,
} from "../../../src/core/reference/liquids";
import { densitySlopePerCelsius, oils, usualTemperature } from "../../../src/core/reference/oils";
import { usual } from "../../../src/core/reference/defaults";

/** "0 to 2" excludes the 0, "from 3 to 15" includes the 3. */
const allowed: Record<keyof typeof limits, string> = {
  reading: "0 to 1000 mL",
  molarity: "0 to 2 mol/L",
  sampleMass: "0 to 1000 g",
  sampleVolume: "0 to 1000 mL",
  titrantStrength: "0 to 200 g/L",
  volume: "0 to 100 L",
  titrantMass: "0 to 20000 g",
  phthalateMass: "0 to 20 g",
  purity: "50 to 100 %",
  assay: "1 to 100 %",
  acidValue: "0 to 400 mg KOH/g",
  ffaPercent: "0 to 100 %",
  oilMass: "0 to 1000000 kg",
  baseCharge: "0 to 3 %",
  chargeGramsPerLitre: "0 to 30 g/L",
  molarRatio: "from 3 to 15 mol/mol",
  volumePercent: "0 to 60 %",
  temperature: "from -20 to 100 C",
  step: "0 to 10 mL",
  massStep: "0 to 10 g",
  concordanceLimit: "0 to 10 mL",
  standardDeviation: "0 to 10 mL",
  halfWidth: "0 to 10 mL",
  usualFreedom: "from 1 to 1000 fraction",
  day: "0 to 2958465 fraction",
  controlValue: "0 to 1000000 fraction",
  controlStep: "0 to 10 fraction",
  baseline: "from 2 to 1000 fraction",
  weight: "0 to 1 fraction",
  amount: "0 to 1000000 fraction",
  lotMass: "0 to 1000000 kg",
  confidence: "from 50 to 99.9 %",
  plusMinusPercent: "0 to 20 %",
  waterPercent: "0 to 100 %",
  inFuel: "0 to 1000000 mg/kg",
  glycerolPercent: "0 to 100 %",
  measured: "0 to 1000000 fraction",
  dishMass: "0 to 10000 g",
  pressureRise: "0 to 1000 kPa",
  lyeMass: "0 to 1000000 g",
  methanolVolume: "0 to 1000000 L",
  methanolMass: "0 to 1000000 kg",
  temperatureRise: "0 to 100 C",
  probeReading: "from -2000 to 2000 fraction",
  ffaLimit: "0 to 30 %",
  fattyAcidMass: "from 100 to 500 g/mol",
  oilDensity: "from 0.5 to 1.2 kg/L",
  titrantExpansion: "0 to 0.002 1/C",
};

/** Molar masses added up by hand from the conventional atomic weights. */
const molarMasses = {
  methanol: 32.042,
  glycerol: 92.094,
  water: 18.015,
  sulfuricAcid: 98.072,
  potassiumHydrogenPhthalate: 204.2223,
  oleicAcid: 282.468,
  oleate: 281.46,
  triolein: 885.453,
} as const;

describe("the reference data are what their sources print", () => {
  it("conventional atomic weights (CIAAW 2021)", () => {
    expect(atomicWeights).toEqual({
      H: "1.008",
      C: "12.011",
      O: "15.999",
      S: "32.06",
      Na: "22.98976928",
      K: "39.0983",
    });
  });

  it("the molar masses that come of them", () => {
    for (const [name, mass] of Object.entries(molarMasses)) {
      expect(compounds[name as keyof typeof molarMasses].toNumber(), name).toBeCloseTo(mass, 9);
    }
    expect(acidValueDefinition.toString()).toBe("56.1");
  });

  it("the bases, their other names, metals and molar masses", () => {
    expect(
      bases.map((base) => [
        base.name,
        base.alsoCalled.join(", "),
        base.metal,
        base.isMethoxide,
        Number(base.molarMass.toFixed(4)),
      ]),
    ).toEqual([
      ["KOH", "potassium hydroxide, caustic potash", "K", false, 56.1053],
      ["NaOH", "sodium hydroxide, caustic soda", "Na", false, 39.9968],
      ["KOCH3", "potassium methoxide", "K", true, 70.1323],
      ["NaOCH3", "sodium methoxide", "Na", true, 54.0238],
    ]);
  });

  it("the acids a % FFA is reported as: four of the standards, the others by their formula", () => {
    expect(
      fattyAcids.map(({ name, reportedMass }) => [name, Number(reportedMass.toFixed(3))]),
    ).toEqual([
      ["oleic", 282],
      ["palmitic", 256],
      ["lauric", 200],
      ["erucic", 338],
      ["myristic", 228.376],
      ["palmitoleic", 254.414],
      ["stearic", 284.484],
      ["linoleic", 280.452],
      ["linolenic", 278.436],
      ["ricinoleic", 298.467],
      ["arachidic", 312.538],
    ]);
  });

  it("the oils: kg/L at C, liquid from C, and 3 x 56100 over the middle of the saponification values", () => {
    expect(
      oils.map(({ name, alsoCalled, density, densityAt, liquidFrom, triglyceride }) => [
        name,
        alsoCalled.join(", "),
        [density, densityAt, liquidFrom ?? "none"].map(String).join(" "),
        triglyceride.toFixed(2),
      ]),
    ).toEqual(
      // saponification value: the middle of the Codex range
      [
        ["canola", "rapeseed", "0.9154 20 0", 187.5],
        ["soybean", "", "0.9203 20 0", 192],
        ["sunflower", "", "0.9189 20 0", 191],
        ["maize", "corn", "0.9194 20 0", 191],
        ["palm", "", "0.9 40 35", 199.5],
        ["coconut", "", "0.9129 40 25", 256.5],
        ["lard", "", "0.8984 40 40", 197.5],
        ["tallow", "", "0.8974 40 45", 196],
        ["used cooking oil", "", "0.915 20 0", 194],
      ].map(([name, also, figures, saponification]) => [
        name,
        also,
        figures,
        (168_300 / Number(saponification)).toFixed(2),
      ]),
    );
    expect(densitySlopePerCelsius.toString()).toBe("0.00066");
    expect(usualTemperature.toString()).toBe("20");
  });

  it("the liquids, and how much they swell", () => {
    expect([methanolDensity, sulfuricAcidDensity].map(String)).toEqual(["0.7914", "1.84"]);
    expect([titrantExpansion.alcohol, titrantExpansion.water].map(String)).toEqual([
      "0.0011",
      "0.00021",
    ]);
  });

  it("the base charges in use", () => {
    expect(
      publishedCharges.map(({ base, amount, unit, source }) => [base, amount, unit, source]),
    ).toEqual([
      ["KOH", "7", "g/L", "practice"],
      ["KOH", "1", "%", "vanGerpen"],
      ["NaOH", "0.3", "%", "ma"],
      ["NaOH", "3.5", "g/L", "practice"],
      ["NaOH", "5", "g/L", "practice"],
      ["NaOH", "1", "%", "freedman"],
      ["NaOCH3", "0.25", "%", "vanGerpen"],
      ["NaOCH3", "0.5", "%", "freedman"],
      ["NaOCH3", "0.5", "%", "ma"],
    ]);
  });

  it("what standards ask of the fuel, ASTM D6751 (2009) and EN 14214:2012", () => {
    expect(fuelLimits.map(({ property, astm, en }) => [property.split(",")[0], astm, en])).toEqual([
      ["Acid value", "0.50", "0.50"],
      ["Sodium and potassium", "5", "5"],
      ["Methanol", "0.2, or flash point 130 C and above", "0.20"],
      ["Water", "0.05 % by volume, with sediment", "500 mg/kg"],
      ["Ester content", "not asked for", "96.5"],
      ["Free glycerol", "0.020", "0.02"],
      ["Total glycerol", "0.240", "0.25 (commonly cited)"],
      ["Flash point", "93", "101"],
    ]);
    // 5 mg of metal: 5 x 304.45 / 22.99 and 5 x 320.56 / 39.10
    expect(aboutSoap).toContain("66 mg/kg of sodium oleate, of potassium 41 mg/kg");
  });

  it("the units of an amount: words, what is shown, and litres or kilograms in one", () => {
    expect(
      amountUnits.map(({ name, alsoCalled, shown, measures, factor }) => [
        [name, ...alsoCalled].join(", "),
        shown,
        measures,
        factor.toNumber(),
      ]),
    ).toEqual([
      ["l, litre, liter", "L", "volume", 1],
      ["ml", "mL", "volume", 0.001],
      ["us_gal", "US gal", "volume", 3.785411784],
      ["uk_gal", "imperial gal", "volume", 4.54609],
      ["g", "g", "mass", 0.001],
      ["kg", "kg", "mass", 1],
      ["lb, lbm", "lb", "mass", 0.45359237],
    ]);
  });

  it("the units that are offered to choose from", () => {
    expect(offeredUnits).toEqual(["l", "kg", "us_gal", "uk_gal", "lb"]);
  });

  it("what is taken where nothing is said", () => {
    expect(Object.entries(usual).map(([name, value]) => [name, value.toString()])).toEqual([
      ["limitFfa", "5"],
      ["molarRatio", "6"],
      ["confidence", "95"],
      ["acidAssay", "96"],
      ["phthalatePurity", "100"],
      ["phthalateLimits", "0.05"],
      ["controlWeight", "0.2"],
    ]);
  });

  it("what each argument may be, in words: a pure ratio has no unit", () => {
    const words = { "mol/mol": "", fraction: "", "1/C": "per C" } as Record<string, string>;
    const said = Object.values(allowed).map((each) => {
      const [, from = "", first = "", to = "", unit = ""] =
        /^(from )?(\S+) to (\S+) (.+)$/.exec(each) ?? [];
      const edge = from ? `from ${first} to` : `above ${first}, up to`;
      return `${edge} ${to} ${words[unit] ?? unit}`.trim();
    });
    expect(Object.values(limits).map((limit) => allowedWords(limit))).toEqual(said);
  });

  it("what each argument may be", () => {
    const written = Object.entries(limits).map(([name, { from, fromIncluded, to, unit }]) => [
      name,
      `${fromIncluded ? "from " : ""}${from} to ${to} ${unit}`,
    ]);
    expect(Object.fromEntries(written)).toEqual(allowed);
  });
});
