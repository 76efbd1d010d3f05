import { computed } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { expand } from "../../core/uncertainty/expanded";
import { worksheetFunction } from "../define";
import { benchOf, titrationArguments } from "./titration";

export const FFAUNCERTAINTY = worksheetFunction(
  "FFAUNCERTAINTY",
  "Expanded uncertainty of the % FFA: the ± of a 95 % interval, in % FFA.",
  titrationArguments,
  (given) => {
    const bench = benchOf(given);
    return isProblem(bench) ? bench : computed(expand(bench).halfWidth);
  },
  {
    result: "% FFA, half-width of the 95 % interval",
    equation:
      "FFA * sqrt((t * s * sqrt(1/n + 1/k))^2 / V^2 + 1.96^2 * (2 * {titreStep}^2 / 6 / V^2 + {massStep}^2 / (6 * w * m^2) + ({molarityPercent}^2 + {samplePercent}^2 + {burettePercent}^2) / 30000))",
    notes: [
      "Counts the scatter of titres and blanks, the graduation, the balance, the titrant, a sample taken by volume and the burette. BUDGET shows each. What is left out is not counted.",
      "With a usual scatter from your record even a single titre has a ±. Where today scatters more than the record explains, today counts alone.",
      "A drop too much at the end point is covered only if titre and blank stop at the same shade.",
      "The interval of a dose is its acid part times this figure over the % FFA.",
    ],
    example: {
      formula: '=TITRE.FFAUNCERTAINTY({2.45,2.45,2.45},"neutralised",0.1,{7.05},0.1,0.01)',
      gives: 0.04527709330007467,
    },
    sources: ["gum", "quam"],
  },
);
