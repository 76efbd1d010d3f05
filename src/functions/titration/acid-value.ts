import { acidValue } from "../../core/titration/acid-value";
import { correctedTitre, molarity, sampleMass } from "../common";
import { worksheetFunction } from "../define";

export const ACIDVALUE = worksheetFunction(
  "ACIDVALUE",
  "Acid value: mg of KOH that would neutralise one gram of the oil.",
  { correctedTitre, molarity, sampleMass },
  (given) => acidValue(given.correctedTitre, given.molarity, given.sampleMass),
  {
    result: "mg KOH/g",
    equation: "56.1 * {molarity} * {correctedTitre} / {sampleMass}",
    notes: [
      "Always counted as KOH, whichever base was in the burette: 56.1 g/mol is part of the definition.",
      "Dose from this figure, not from a percentage: the percentage depends on the acid it is reported as.",
    ],
    example: { formula: "=TITRE.ACIDVALUE(2.3,0.1,10)", gives: 1.2903 },
    sources: ["iso660", "en14104", "aocsCd3d"],
  },
);
