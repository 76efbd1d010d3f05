import { exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { usualFreedom } from "../../core/record/usual-scatter";
import { worksheetFunction } from "../define";
import { recordOf, setArguments } from "./titration-sets";

export const USUALFREEDOM = worksheetFunction(
  "USUALFREEDOM",
  "How well USUALSCATTER is known: the degrees of freedom behind it.",
  setArguments,
  (given) => {
    const record = recordOf(given);
    if (isProblem(record)) return record;
    const found = usualFreedom(record);
    return isProblem(found) ? found : exact(found);
  },
  {
    result: "degrees of freedom",
    equation: "sum(n - 1) + sum(k - 1), rows of {titreSets} and {blankSets}",
    notes: [
      "Ten titrations of three titres make 20. With 20 a slip of 0.3 mL is found in 95 of 100 titrations.",
    ],
    example: {
      formula: '=TITRE.USUALFREEDOM({2.4,2.45,2.5;1.1,1.15,"";3,3,3.1;2.2,"",""})',
      gives: 5,
    },
    sources: ["iso5725Pooled", "gum"],
  },
);
