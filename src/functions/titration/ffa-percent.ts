import { ffaPercent } from "../../core/titration/free-fatty-acid";
import { correctedTitre, molarity, sampleMass } from "../common";
import { worksheetFunction } from "../define";
import { fattyAcid } from "../words";

export const FFAPERCENT = worksheetFunction(
  "FFAPERCENT",
  "Free fatty acid in percent of the oil's mass, from a titration (1.97 means 1.97 %).",
  { correctedTitre, molarity, sampleMass, fattyAcid },
  (given) => ffaPercent(given.correctedTitre, given.molarity, given.sampleMass, given.fattyAcid),
  {
    result: "% m/m",
    equation: "{molarity} * {correctedTitre} * {fattyAcid} / (10 * {sampleMass})",
    notes: [
      "Reported as oleic acid (282 g/mol) unless another acid is named: palmitic for palm, lauric for coconut.",
      "For display. Dose from the acid value, where the choice of acid does not enter.",
    ],
    example: { formula: "=TITRE.FFAPERCENT(10,0.1,28.2)", gives: 1 },
    sources: ["iso660", "aocsCa5a"],
  },
);
