import { computed } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { usualScatter } from "../../core/record/usual-scatter";
import { limits } from "../../core/reference/limits";
import { optionalNumber } from "../arguments";
import { worksheetFunction } from "../define";
import { recordOf, sampleMassSets, setArguments } from "./titration-sets";

export const USUALSCATTER = worksheetFunction(
  "USUALSCATTER",
  "Your usual scatter of one titration, mL, from earlier titrations, one a row.",
  {
    ...setArguments,
    sampleMassSets,
    titreStep: optionalNumber(
      limits.step,
      "the coarsest usual step that fits all readings as typed",
      undefined,
      "The smallest difference you read on the burette, mL.",
    ),
  },
  (given) => {
    const record = recordOf(given);
    if (isProblem(record)) return record;
    const found = usualScatter(record, given.titreStep);
    return isProblem(found) ? found : computed(found);
  },
  {
    result: "mL, pooled standard deviation",
    equation:
      "max(sqrt(sum((V - mean)^2) / sum(n - 1)), {titreStep} / sqrt(6)), rows of {titreSets} and {blankSets}",
    notes: [
      "Each row is judged about its own mean, so lots of different acid pool. Rows with one reading add nothing.",
      "Pool rows of one method alone: the same burette, the same hand, a titrant of about the same strength.",
      "Give it with USUALFREEDOM to FFAUNCERTAINTY, BUDGET or ACIDVALUEUNCERTAINTY: a single titre then has a ±.",
    ],
    example: {
      formula: '=TITRE.USUALSCATTER({2.4,2.45,2.5;1.1,1.15,"";3,3,3.1})',
      gives: 0.050826502273,
    },
    sources: ["iso5725Pooled", "gum"],
  },
);
