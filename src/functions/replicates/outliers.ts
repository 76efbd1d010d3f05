import { isProblem } from "../../core/problem/problem";
import { judgement } from "../../core/replicates/judgement";
import { worksheetFunction } from "../define";
import { inShape } from "../shape";
import { replicateArguments, setOf } from "./replicate-set";

export const OUTLIERS = worksheetFunction(
  "OUTLIERS",
  "Marks each replicate: agrees, suspect, apart or not tested. Nothing is dropped.",
  replicateArguments,
  (given) => {
    const set = setOf(given);
    if (isProblem(set)) return set;
    const marks = [...judgement(set).marks];
    const inSlots = given.readings.slots.map((slot) =>
      slot === null ? null : (marks.shift() ?? null),
    );
    return inShape(given.readings, inSlots);
  },
  {
    result: "agrees, suspect, apart, not tested, or empty, one for each reading",
    equation:
      "max(abs({readings} - mean)) / sqrt(s^2 + {step}^2 / 6) > critical G; with a record: max(abs({readings} - mean)) > t * {usualScatter} * sqrt((n - 1) / n)",
    notes: [
      "Without a record: Grubbs' test on the reading farthest from the mean, with allowance for the graduation. Without the allowance it flags up to six in ten honest sets of three read to coarse graduations.",
      "The test alone cannot settle three: at a scatter of 0.05 mL, read to 0.05 mL, a slip of 1 mL among three is never flagged, among four in 95 of 100 sets (simulated). So not flagged is not agreement: readings more than 0.15 mL (three drops) or three steps apart, whichever is more, are apart: common practice, no source. In simulations with a scatter of 0.05 mL this calls 4 to 7 of 100 honest sets of three apart and finds a slip of 0.3 mL in 99.",
      "With usualScatter and usualFreedom from your record each reading is held against your own scatter: among three a slip of 0.3 mL is found in 97 of 100 (simulated, 20 degrees of freedom).",
      "With sampleMasses each reading less the mean blank is judged on its own mass. Leave blanks out where readings are net already.",
      "One test and at most one flag. Find the cause of a suspect reading; omitting it is your decision, with the reason written beside it.",
    ],
    example: {
      formula: "=TITRE.OUTLIERS({2.3,2.31,2.32,2.9})",
      gives: [["agrees", "agrees", "agrees", "suspect"]],
    },
    sources: ["grubbs", "gum"],
  },
);
