import { limits } from "../../core/reference/limits";
import { usual } from "../../core/reference/defaults";
import { molarityFromPhthalate } from "../../core/titration/titrant";
import { number, usualNumber } from "../arguments";
import { correctedTitre } from "../common";
import { worksheetFunction } from "../define";

export const MOLARITYFROMKHP = worksheetFunction(
  "MOLARITYFROMKHP",
  "Strength of a titrant against potassium hydrogen phthalate (KHP), mol/L.",
  {
    khpMass: number(limits.phthalateMass, "KHP mass", "Grams of dried KHP weighed in."),
    correctedTitre,
    purityPercent: usualNumber(
      limits.purity,
      usual.phthalatePurity,
      "Purity of the KHP from its certificate, in percent.",
    ),
  },
  (given) => molarityFromPhthalate(given.khpMass, given.correctedTitre, given.purityPercent),
  {
    result: "mol/L",
    equation: "1000 * {khpMass} * {purityPercent} / (100 * 204.2223 * {correctedTitre})",
    notes: ["KHP is an acid of known molar mass, so the base it takes is known without any assay."],
    example: { formula: "=TITRE.MOLARITYFROMKHP(2.042223,100)", gives: 0.1 },
    sources: ["quam", "ciaaw"],
  },
);
