import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { limits } from "../../core/reference/limits";
import { replicatesNeeded } from "../../core/replicates/replicates-needed";
import { number } from "../arguments";
import { worksheetFunction } from "../define";
import { confidencePercent } from "./replicate-set";

export const REPLICATES = worksheetFunction(
  "REPLICATES",
  "How many titrations bring the mean within a half-width, at a known scatter (2 to 100).",
  {
    standardDeviation: number(
      limits.standardDeviation,
      "standard deviation",
      "Standard deviation of one titration, mL, from your own earlier sets.",
    ),
    halfWidth: number(limits.halfWidth, "half-width", "How near the mean should be, ± mL."),
    confidencePercent,
  },
  (given) => {
    const count = replicatesNeeded(
      given.standardDeviation,
      given.halfWidth,
      given.confidencePercent,
    );
    return isProblem(count) ? count : exact(count);
  },
  {
    result: "number of titrations",
    equation: "smallest n with t * {standardDeviation} / sqrt(n) <= {halfWidth}",
    notes: [
      "Scatter alone: repeating a titration does not improve the balance, the titrant or the graduation.",
    ],
    example: { formula: "=TITRE.REPLICATES(0.05,0.05)", gives: 7 },
    sources: ["gum", "byHand"],
  },
);
