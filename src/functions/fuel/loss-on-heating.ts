import { caution } from "../../core/batch/cautions";
import { lossOnHeating } from "../../core/fuel/water-measured";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";

export const LOSSONHEATING = worksheetFunction(
  "LOSSONHEATING",
  "Water and what else leaves by drying, % m/m, from three weighings.",
  {
    dishMass: number(limits.dishMass, "dish mass", "Grams of the dish alone, dry."),
    massBefore: number(limits.dishMass, "mass before", "Grams of dish and oil before drying."),
    massAfter: number(limits.dishMass, "mass after", "Grams of both after drying, cooled."),
  },
  (given) => lossOnHeating(given.dishMass, given.massBefore, given.massAfter),
  {
    result: "% m/m",
    equation: "100 * ({massBefore} - {massAfter}) / ({massBefore} - {dishMass})",
    notes: [
      "Dry at 103 C to constant mass, cool before weighing (ISO 662, commonly cited). Methanol and light solvents leave as well, and count.",
      "A 0.01 g scale and 20 g of oil know it to ±0.04 %: they cannot judge the 0.06 % that oil should stay under. A 0.001 g scale can.",
      caution("drying"),
    ],
    example: { formula: "=TITRE.LOSSONHEATING(45,65,64.98)", gives: 0.1 },
    sources: ["iso662"],
  },
);
