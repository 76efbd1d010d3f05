import { limits } from "../../core/reference/limits";
import { acidValueFromFfa } from "../../core/titration/free-fatty-acid";
import { number } from "../arguments";
import { worksheetFunction } from "../define";
import { fattyAcid } from "../words";

export const ACIDVALUEFROMFFA = worksheetFunction(
  "ACIDVALUEFROMFFA",
  "Acid value, mg KOH/g, from a percentage of free fatty acid.",
  {
    ffaPercent: number(limits.ffaPercent, "% FFA", "Free fatty acid in percent: 1.97, not 0.0197."),
    fattyAcid,
  },
  (given) => acidValueFromFfa(given.ffaPercent, given.fattyAcid),
  {
    result: "mg KOH/g",
    equation: "561 * {ffaPercent} / {fattyAcid}",
    notes: [
      "Name the acid the percentage was reported as: 1 % as lauric is 1.4 times as much acid as 1 % as oleic.",
      "AOCS prints the factor for oleic as 1.99.",
    ],
    example: { formula: '=TITRE.ACIDVALUEFROMFFA(2,"lauric")', gives: 5.61 },
    sources: ["iso660", "aocsCa5a"],
  },
);
