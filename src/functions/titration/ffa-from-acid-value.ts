import { ffaFromAcidValue } from "../../core/titration/free-fatty-acid";
import { acidValue } from "../common";
import { worksheetFunction } from "../define";
import { fattyAcid } from "../words";

export const FFAFROMACIDVALUE = worksheetFunction(
  "FFAFROMACIDVALUE",
  "Free fatty acid in percent, from an acid value.",
  { acidValue, fattyAcid },
  (given) => ffaFromAcidValue(given.acidValue, given.fattyAcid),
  {
    result: "% m/m",
    equation: "{acidValue} * {fattyAcid} / 561",
    notes: ["The same acid in another unit: about half the acid value, as oleic."],
    example: { formula: "=TITRE.FFAFROMACIDVALUE(5.61,200)", gives: 2 },
    sources: ["iso660"],
  },
);
