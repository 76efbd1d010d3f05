import { route } from "../../core/batch/route";
import { limits } from "../../core/reference/limits";
import { optionalNumber } from "../arguments";
import { acidValue, limitFfaPercent } from "../common";
import { worksheetFunction } from "../define";

export const ROUTE = worksheetFunction(
  "ROUTE",
  "Which way a lot can be processed, in one sentence, from its acid value and its water.",
  {
    acidValue,
    waterPercent: optionalNumber(
      limits.waterPercent,
      "not measured",
      undefined,
      "Water in the oil, percent of its mass.",
    ),
    limitFfaPercent,
  },
  (given) => route(given.acidValue, given.waterPercent, given.limitFfaPercent),
  {
    result: "a sentence",
    equation: "band of {acidValue} * 282 / 561",
    notes: [
      "Bands of % FFA as oleic: under 0.5, 0.5, 1, 3, the limit, 15; a lot exactly at an edge is in the upper band.",
      "It informs, it does not decide. 0.5 % stands in Freedman 1984 (commonly cited) and Ma 1998, 3 % was read in a review, 5 % is commonly cited, 1 and 15 % are common practice without a source. Your oil and your process have the last word.",
      "Water does more harm than acid: above 0.06 % (Ma 1998) the oil wants drying first. That is the oil's own: BATCH shows what acid, base and lye bring.",
    ],
    example: {
      formula: "=TITRE.ROUTE(0.8,0.04)",
      gives: "FFA 0.402 % (under 0.5 %): lye only, as for refined oil; water 0.04 % is low enough.",
    },
    sources: ["freedman", "ma", "kombe", "practice"],
  },
);
