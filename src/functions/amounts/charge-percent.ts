import { chargePercent } from "../../core/batch/conversions";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { temperature } from "../common";
import { worksheetFunction } from "../define";
import { oil } from "../words";

export const CHARGEPERCENT = worksheetFunction(
  "CHARGEPERCENT",
  "A base charge in grams per litre of oil, as percent of the oil's mass of pure base.",
  {
    gramsPerLitre: number(
      limits.chargeGramsPerLitre,
      "base charge",
      "Grams of base per litre of oil, for the reaction.",
    ),
    assayPercent: number(
      limits.assay,
      "assay",
      "Assay of the lye that figure is for, in percent; 100 when it is quoted as pure.",
    ),
    oil,
    temperature,
  },
  (given) => chargePercent(given.gramsPerLitre, given.assayPercent, given.oil, given.temperature),
  {
    result: "% m/m, pure base",
    equation: "{gramsPerLitre} * {assayPercent} / (1000 * density({oil}, {temperature}))",
    notes: [
      "5 g/L of NaOH and 7 g/L of pure KOH are in use (common practice, no source): 0.546 and 0.765 % of the oil's mass.",
    ],
    example: { formula: "=TITRE.CHARGEPERCENT(18.3,50,0.915)", gives: 1 },
    sources: ["practice", "byHand"],
  },
);
