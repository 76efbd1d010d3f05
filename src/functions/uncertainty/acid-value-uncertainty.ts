import { computed } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { expand } from "../../core/uncertainty/expanded";
import { worksheetFunction } from "../define";
import { acidValueArguments, acidValueBenchOf } from "./titration";

export const ACIDVALUEUNCERTAINTY = worksheetFunction(
  "ACIDVALUEUNCERTAINTY",
  "Expanded uncertainty of the acid value: the ± of a 95 % interval, in mg KOH/g.",
  acidValueArguments,
  (given) => {
    const bench = acidValueBenchOf(given);
    return isProblem(bench) ? bench : computed(expand(bench).halfWidth);
  },
  {
    result: "mg KOH/g, half-width of the 95 % interval",
    equation:
      "AV * sqrt((t * s * sqrt(1/n + 1/k))^2 / V^2 + 1.96^2 * (2 * {titreStep}^2 / 6 / V^2 + {massStep}^2 / (6 * w * m^2) + ({molarityPercent}^2 + {samplePercent}^2 + {burettePercent}^2) / 30000))",
    notes: [
      "FFAUNCERTAINTY for the acid value: the same part of it. What it counts and leaves out is told there.",
    ],
    example: {
      formula: "=TITRE.ACIDVALUEUNCERTAINTY({2.45,2.45,2.45},{0.15},0.1,{7.05},0.1,0.01)",
      gives: 0.0900692892449061,
    },
    sources: ["gum", "quam"],
  },
);
