import { molarRatio } from "../../core/batch/conversions";
import { limits } from "../../core/reference/limits";
import { methanolDensity } from "../../core/reference/liquids";
import { number } from "../arguments";
import { temperature } from "../common";
import { worksheetFunction } from "../define";
import { oil } from "../words";

export const MOLARRATIO = worksheetFunction(
  "MOLARRATIO",
  "Moles of methanol per mole of triglyceride, from methanol as percent of the oil's volume.",
  {
    volumePercent: number(
      limits.volumePercent,
      "methanol share",
      "Methanol as percent of the oil's volume: 20 means 20 L to 100 L.",
    ),
    oil,
    temperature,
  },
  (given) => molarRatio(given.volumePercent, given.oil, given.temperature),
  {
    result: "mol/mol",
    equation: `{volumePercent} / 100 * (${methanolDensity.toString()} / 32.042) / (density({oil}, {temperature}) / triglyceride({oil}))`,
    notes: [
      "20 % by volume is 4.78 to 1, not 6 to 1. The reaction itself uses 3 to 1; 6 to 1 is the usual excess (commonly cited).",
    ],
    example: { formula: "=TITRE.MOLARRATIO(20)", gives: 4.7802526 },
    sources: ["handbook", "codex", "freedman"],
  },
);
