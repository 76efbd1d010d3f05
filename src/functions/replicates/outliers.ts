import { isProblem } from "../../core/problem/problem";
import { outlierTest } from "../../core/replicates/outlier-test";
import { worksheetFunction } from "../define";
import { inShape } from "../shape";
import { replicateArguments, setOf } from "./replicate-set";

export const OUTLIERS = worksheetFunction(
  "OUTLIERS",
  "Marks each replicate as suspect or agrees, in the shape of the readings. Nothing is dropped.",
  replicateArguments,
  (given) => {
    const set = setOf(given);
    if (isProblem(set)) return set;
    const found = outlierTest(set);
    let reading = -1;
    const marks = given.readings.slots.map((slot) => {
      if (slot === null) return null;
      reading += 1;
      return found?.isSuspect && found.position === reading ? "suspect" : "agrees";
    });
    return inShape(given.readings, marks);
  },
  {
    result: "suspect, agrees, or empty, one for each reading",
    equation: "max(abs({readings} - mean)) / sqrt(s^2 + {step}^2 / 6) > critical G",
    notes: [
      "Grubbs' test on the reading farthest from the mean, with allowance for the graduation: without it, the test flags up to six in ten honest sets of three read to coarse graduations.",
      "One test and at most one flag. Find the cause of a suspect reading; omitting it is your decision, with the reason written beside it.",
      "Three readings cannot settle it: at a scatter of 0.05 mL, read to 0.05 mL, a slip of 1 mL among three is never flagged, among four in 95 of 100 sets (simulated). A fourth titre settles more than any test.",
    ],
    example: {
      formula: "=TITRE.OUTLIERS({2.3,2.31,2.32,2.9})",
      gives: [["agrees", "agrees", "agrees", "suspect"]],
    },
    sources: ["grubbs", "gum"],
  },
);
