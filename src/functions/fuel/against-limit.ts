import { againstLimitInWords } from "../../core/fuel/against-limit-words";
import { limits } from "../../core/reference/limits";
import { number } from "../arguments";
import { worksheetFunction } from "../define";

export const AGAINSTLIMIT = worksheetFunction(
  "AGAINSTLIMIT",
  "Is a figure with its ± below a limit: below, above, or cannot tell, in one sentence.",
  {
    value: number(limits.measured, "value", "The figure found, in any unit."),
    uncertainty: number(limits.measured, "uncertainty", "Its ± (95 %), in the same unit."),
    limit: number(limits.measured, "limit", "The limit, in the same unit."),
  },
  (given) => againstLimitInWords(given.value, given.uncertainty, given.limit),
  {
    result: "a sentence that begins below:, cannot tell: or above:",
    equation: "{value} <= {limit} - 1.645 * {uncertainty} / 1.96",
    notes: [
      "Guarded acceptance: below is said only where it is at least 95 % sure, above likewise.",
      "For the acid value of fuel: MEANACIDVALUE and ACIDVALUEUNCERTAINTY on 20 g, and the limit 0.50 (EN 14214, ASTM D6751).",
      "An edition in force where you live may have another limit, and a figure of your own is no certificate.",
    ],
    example: {
      formula: "=TITRE.AGAINSTLIMIT(0.3,0.196,0.5)",
      gives: "below: at least 95 % sure to be under the limit of 0.5, as is anything up to 0.3355.",
    },
    sources: ["jcgm106", "en14214", "astmD6751"],
  },
);
