import { conversion } from "../../core/fuel/glycerol";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";
import { oil } from "../words";

export const CONVERSION = worksheetFunction(
  "CONVERSION",
  "How much of the triglyceride reacted, %, from total and free glycerol.",
  {
    totalGlycerol: number(limits.glycerolPercent, "total glycerol", "Total glycerol, % m/m."),
    freeGlycerol: number(limits.glycerolPercent, "free glycerol", "Free glycerol, % m/m."),
    oil,
  },
  (given) => conversion(given.totalGlycerol, given.freeGlycerol, given.oil),
  {
    result: "% of the triglyceride",
    equation: "100 * (1 - ({totalGlycerol} - {freeGlycerol}) / (100 * 92.094 / {oil}))",
    notes: [
      "Glycerol that is still bound belongs to oil that has not reacted all the way. Triolein holds 10.40 % of it.",
      "At the limits of ASTM D6751, 0.240 and 0.020 %, 97.9 % has reacted.",
      "The methanol trial, 3 mL of fuel in 27 mL of methanol, is no measurement (common practice, no source).",
    ],
    example: { formula: "=TITRE.CONVERSION(0.24,0.02)", gives: 97.884773600886 },
    sources: ["definition", "astmD6751", "codex"],
  },
);
