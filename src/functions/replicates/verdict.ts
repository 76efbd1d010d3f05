import { isProblem } from "../../core/problem/problem";
import { verdict } from "../../core/replicates/verdict";
import { worksheetFunction } from "../define";
import { replicateArguments, setOf } from "./replicate-set";

export const VERDICT = worksheetFunction(
  "VERDICT",
  "What the replicates can and cannot tell, in one sentence, with what to do next.",
  replicateArguments,
  (given) => {
    const set = setOf(given);
    return isProblem(set) ? set : verdict(set);
  },
  {
    result: "one sentence",
    equation: "max(abs({readings} - mean)) / sqrt(s^2 + {step}^2 / 6) > critical G",
    notes: [
      "The figure is G with allowance for the graduation, beside its limit: see SPREAD for all of them.",
      "Choosing the best two of three is never offered: the pair's mean is worse than the mean of all three, and its spread flatters.",
    ],
    example: {
      formula: "=TITRE.VERDICT({2.3,2.35,2.9})",
      gives:
        "2.90 mL lies farthest out (G 1.1493, limit 1.1543 at 95 %): keep all three; they cannot settle it, and a fourth titre settles more than any test.",
    },
    sources: ["grubbs", "gum"],
  },
);
