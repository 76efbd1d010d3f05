import { cautionsFor } from "../../core/batch/cautions";
import { methanolVolume } from "../../core/batch/methanol";
import { limits } from "../../core/reference/limits";
import { methanolDensity } from "../../core/reference/liquids";
import { optionalNumber } from "../arguments";
import { molarRatio, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { oil } from "../words";

export const METHANOL = worksheetFunction(
  "METHANOL",
  "Litres of methanol at 20 C for a batch, by molar ratio to the triglyceride.",
  {
    oilMass,
    molarRatio,
    acidValue: optionalNumber(
      limits.acidValue,
      "no acid",
      undefined,
      "Acid value of the oil, mg KOH/g: the acid is not triglyceride.",
    ),
    oil,
  },
  (given) => methanolVolume(given.oilMass, given.molarRatio, given.acidValue, given.oil),
  {
    result: "L at 20 C",
    equation: `{oilMass} * (1 - {acidValue} / 56.1 * 0.282468) * {molarRatio} * 32.042 / triglyceride({oil}) / ${methanolDensity.toString()}`,
    notes: [
      "Left out, the ratio is 6 to 1: twice what the reaction takes (Freedman 1984, commonly cited).",
      "The ratio belongs to the triglyceride that is left once the acid is taken off.",
      ...cautionsFor("methanol"),
    ],
    example: { formula: "=TITRE.METHANOL(100,3,,0.9)", gives: 13.717637 },
    sources: ["freedman", "handbook", "codex"],
  },
);
