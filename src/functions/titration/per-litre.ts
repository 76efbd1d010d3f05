import { limits } from "../../core/reference/limits";
import { perLitre } from "../../core/titration/titrant";
import { number } from "../arguments";
import { correctedTitre } from "../common";
import { worksheetFunction } from "../define";

export const PERLITRE = worksheetFunction(
  "PERLITRE",
  "Grams of the same lye, same lot, per litre of oil, for the acid part alone.",
  {
    correctedTitre,
    titrantStrength: number(
      limits.titrantStrength,
      "titrant strength",
      "Grams of lye weighed into a litre of titrant, g/L.",
    ),
    sampleVolume: number(limits.sampleVolume, "sample volume", "Oil taken for one titration, mL."),
  },
  (given) => perLitre(given.correctedTitre, given.titrantStrength, given.sampleVolume),
  {
    result: "g/L of oil",
    equation: "{correctedTitre} * {titrantStrength} / {sampleVolume}",
    notes: [
      "An exact identity: 1 mL of a 1 g/L titrant on 1 mL of oil is 1 g of lye per litre. Density, molar mass and assay cancel.",
      "It holds only when titrant and batch use the same lye from the same lot. Titrate with NaOH and weigh out as many grams of KOH, and the acid part is 29 % short: KOH takes 1.40 times the grams.",
      "The base for the reaction comes on top, and its assay does not cancel.",
    ],
    example: { formula: "=TITRE.PERLITRE(2.3,1,2)", gives: 1.15 },
    sources: ["byHand", "practice"],
  },
);
