/** Each argument, typed by hand: its unit, and what is called for where it is needed and not there. */
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { goodArguments } from "./good-arguments";
import { outcome } from "./outcome";

/** "unit: called"; no called where it may be left out. A range is in brackets. */
const typed: Record<string, string> = {
  titres: "[mL: titre]",
  blanks: "[mL]",
  readings: "[mL: reading]",
  correctedTitre: "mL: corrected titre",
  molarity: "mol/L: titrant strength",
  sampleMass: "g: sample mass",
  sampleMasses: "[g: sample mass]",
  fattyAcid: "g/mol",
  acidValue: "mg KOH/g: acid value",
  ffaPercent: "%: % FFA",
  titrantStrength: "g/L: titrant strength",
  sampleVolume: "mL: sample volume",
  mass: "g: mass",
  volume: "L: volume",
  base: ": base",
  assayPercent: "%: assay",
  khpMass: "g: KHP mass",
  khpMasses: "[g: KHP mass]",
  purityPercent: "%",
  titre: "mL: titre",
  readAt: "C: temperature",
  setAt: "C: temperature",
  titrantSolvent: "1/C: titrant solvent",
  expectedFfaPercent: "%: % FFA",
  targetTitre: "mL: target titre",
  oil: "kg/L",
  temperature: "C",
  amount: "fraction: amount",
  amounts: "[fraction: amount]",
  unit: ": unit",
  gramsPerLitre: "g/L: base charge",
  volumePercent: "%: methanol share",
  limit: "mL: limit",
  step: "mL",
  confidencePercent: "%",
  standardDeviation: "mL: standard deviation",
  halfWidth: "mL: half-width",
  titreStep: "mL: burette step",
  massStep: "g: balance step",
  molarityPercent: "%",
  samplePercent: "%",
  burettePercent: "%",
  usualScatter: "mL",
  usualFreedom: "fraction",
  oilMass: "kg: oil mass",
  baseCharge: "%: base charge",
  limitFfaPercent: "%",
  molarRatio: "mol/mol",
  acidValueA: "mg KOH/g: acid value of lot A",
  acidValueB: "mg KOH/g: acid value of lot B",
  targetAcidValue: "mg KOH/g: target",
  acidValues: "[mg KOH/g: acid value]",
  masses: "[kg: mass]",
  waterPercent: "%",
  acidAssayPercent: "%",
  titreSets: "[mL: titre]",
  blankSets: "[mL]",
  sampleMassSets: "[g]",
  dates: "[fraction: date]",
  strengths: "[mol/L: strength]",
  day: "fraction: day",
  values: "[fraction: value]",
  baseline: "fraction",
  weight: "fraction",
  value: "fraction: value",
  uncertainty: "fraction: uncertainty",
  soap: "mg/kg: soap",
  catalyst: "mg/kg",
  totalGlycerol: "%: total glycerol",
  freeGlycerol: "%: free glycerol",
  dishMass: "g: dish mass",
  massBefore: "g: mass before",
  massAfter: "g: mass after",
  pressureRise: "kPa: pressure rise",
  gasSpace: "L: gas space",
  methanolMass: "kg",
  methanolWaterPercent: "%",
  lyeMass: "g: lye mass",
  methanolVolume: "L: methanol volume",
  trialLyeMass: "g: trial lye mass",
  trialMethanolVolume: "L: trial methanol volume",
  trialRise: "C: trial rise",
  volumes: "[mL: volume]",
};

/** Where one name means two things. */
const typedOf: Record<string, Record<string, string>> = {
  SAMPLEGRAMS: { volume: "mL: volume" },
  OUTLIERS: { sampleMasses: "[g]" },
  VERDICT: { sampleMasses: "[g]" },
  SPREAD: { sampleMasses: "[g]" },
  CATALYSTFROMFFA: { fattyAcid: "g/mol: fatty acid" },
  METHANOL: { acidValue: "mg KOH/g" },
  USUALSCATTER: { titreStep: "mL" },
  CONTROL: { step: "fraction" },
  CONTROLFLAGS: { step: "fraction" },
  AGAINSTLIMIT: { limit: "fraction: limit" },
  GLYCEROL: { blanks: "[mL: blank]" },
  WATERFROMGAS: { temperature: "C: temperature" },
  WATERBALANCE: { waterPercent: "%: water" },
  ENDPOINT: { readings: "[fraction: reading]" },
  STEEPNESS: { readings: "[fraction: reading]" },
};

const everyArgument = catalogue.flatMap((entry) =>
  entry.arguments.map((argument, position) => ({ entry, argument, position })),
);

describe("an argument", () => {
  it.each(everyArgument)(
    "$entry.id: $argument.name has this unit, and is called so where it is missing",
    (one) => {
      const { entry, argument, position } = one;
      const given = [...goodArguments(entry.id)];
      given[position] = null;
      const seen = outcome(entry, given);
      const missing =
        argument.whenLeftOut === undefined && "error" in seen
          ? seen.message.replace(/^No (.*) yet: (\S+) is not filled in\.$/, (_, called, name) =>
              name === argument.name ? `: ${String(called)}` : "?",
            )
          : "";
      const said = `${argument.unit}${missing}`;
      const wanted = typedOf[entry.id]?.[argument.name] ?? typed[argument.name];
      expect(argument.list ? `[${said}]` : said).toBe(wanted);
    },
  );
});
