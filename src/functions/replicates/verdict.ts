import { isProblem } from "../../core/problem/problem";
import { verdict } from "../../core/replicates/verdict";
import { worksheetFunction } from "../define";
import { replicateArguments, setOf } from "./replicate-set";

export const VERDICT = worksheetFunction(
  "VERDICT",
  "What the replicates are worth, in plain words, with what to do next.",
  replicateArguments,
  (given) => {
    const set = setOf(given);
    return isProblem(set) ? set : verdict(set);
  },
  {
    result: "one sentence or two",
    equation:
      "max(abs({readings} - mean)) / sqrt(s^2 + {step}^2 / 6) > critical G; with a record: max(abs({readings} - mean)) > t * {usualScatter} * sqrt((n - 1) / n)",
    notes: [
      "It says what OUTLIERS marks: agrees, suspect, apart or not tested. The figures of the test stand in SPREAD.",
      "One reading ten or a hundred times the others, or a tenth, is named as a slip of the decimal point.",
      "A reading more than three times as far from the others as readings may lie apart is named even where three readings are too few for a test: common practice, no source.",
      "With a usual scatter it says so when today, titres and blanks, scatters more than the record explains (F test at 95 %): then the ± counts today alone.",
      "Choosing the best two of three is never offered: the pair's mean is worse than the mean of all three in two sets of three, and its spread flatters.",
    ],
    example: {
      formula: "=TITRE.VERDICT({2.3,2.35,2.9})",
      gives: "2.90 mL is 0.55 mL away from the two that agree. Titrate again.",
    },
    sources: ["grubbs", "gum"],
  },
);
