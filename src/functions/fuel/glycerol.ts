import { glycerolPercent } from "../../core/fuel/glycerol";
import { limits } from "../../core/reference/limits";
import { list } from "../arguments";
import { molarity, titres } from "../common";
import { worksheetFunction } from "../define";
import { fuelMass } from "./acid-titration";

export const GLYCEROL = worksheetFunction(
  "GLYCEROL",
  "Glycerol in fuel, % m/m, by periodate and thiosulfate.",
  {
    titres,
    blanks: list(limits.reading, "blank", "Titres of the blank, mL: larger than those of fuel."),
    molarity,
    sampleMass: fuelMass,
  },
  (given) =>
    glycerolPercent(given.titres.filled, given.blanks.filled, given.molarity, given.sampleMass),
  {
    result: "% m/m",
    equation: "(mean({blanks}) - mean({titres})) * {molarity} * 92.094 / 40 / {sampleMass}",
    notes: [
      "One glycerol takes two periodate, and so four thiosulfate less than the blank. The sample mass is the fuel in the portion titrated, not all that was weighed in.",
      "Of fuel as it is: free glycerol. Of fuel saponified first: total glycerol. CONVERSION takes both.",
      "Limits: free 0.02 %; total 0.25 % (EN 14214) or 0.240 % (ASTM D6751). The formula is as commonly cited: follow the method itself.",
    ],
    example: { formula: "=TITRE.GLYCEROL({23.7},{25},0.01,0.125)", gives: 0.2394444 },
    sources: ["aocsCa14", "en14214", "astmD6751"],
  },
);
