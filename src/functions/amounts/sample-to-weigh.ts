import { limits } from "../../core/reference/limits";
import { sampleToWeigh } from "../../core/titration/free-fatty-acid";
import { number } from "../arguments";
import { molarity } from "../common";
import { worksheetFunction } from "../define";
import { fattyAcid } from "../words";

export const SAMPLETOWEIGH = worksheetFunction(
  "SAMPLETOWEIGH",
  "Grams of oil that bring the titre to a target, at an expected % FFA.",
  {
    expectedFfaPercent: number(limits.ffaPercent, "% FFA", "The % FFA you expect, in percent."),
    molarity,
    targetTitre: number(limits.reading, "target titre", "The titre you would like, mL."),
    fattyAcid,
  },
  (given) =>
    sampleToWeigh(given.expectedFfaPercent, given.molarity, given.targetTitre, given.fattyAcid),
  {
    result: "g",
    equation: "{molarity} * {targetTitre} * {fattyAcid} / (10 * {expectedFfaPercent})",
    notes: [
      "Aim for a titre of at least twenty of the smallest steps you can read: a small titre is mostly reading error (common practice, no source).",
    ],
    example: { formula: "=TITRE.SAMPLETOWEIGH(1,0.1,10)", gives: 28.2 },
    sources: ["aocsCa5a", "practice"],
  },
);
