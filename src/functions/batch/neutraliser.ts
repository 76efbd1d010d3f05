import { neutraliser } from "../../core/batch/catalyst";
import { acidValue, assayPercent, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";

export const NEUTRALISER = worksheetFunction(
  "NEUTRALISER",
  "Grams of lye, as weighed, that neutralise the acid in a batch: the acid part alone.",
  { oilMass, acidValue, base: base("The base of the lye."), assayPercent },
  (given) => neutraliser(given.oilMass, given.acidValue, given.base, given.assayPercent),
  {
    result: "g as weighed",
    equation: "{oilMass} * {acidValue} / 56.1 * {base} / ({assayPercent} / 100)",
    notes: [
      "One mole of base for each mole of acid. The base for the reaction comes on top: CATALYST.",
    ],
    example: { formula: '=TITRE.NEUTRALISER(100,5.61,"KOH",100)', gives: 561.053 },
    sources: ["ciaaw", "vanGerpen"],
  },
);
