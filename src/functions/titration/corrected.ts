import { correctedTitre } from "../../core/titration/corrected-titre";
import { blanks } from "../blanks";
import { titres } from "../common";
import { worksheetFunction } from "../define";

export const CORRECTED = worksheetFunction(
  "CORRECTED",
  "Corrected titre: mean titre less mean blank, mL.",
  { titres, blanks: blanks("optional") },
  (given) => correctedTitre(given.titres.filled, given.blanks),
  {
    result: "mL",
    equation: "mean({titres}) - mean({blanks})",
    notes: [
      "Titrate a blank of the same solvent, in the same volume, to the same shade, or neutralise the solvent beforehand and type neutralised. Never do both.",
      "A titre that is not above the blank is refused: the acid is below what that sample can show.",
    ],
    example: { formula: "=TITRE.CORRECTED({2.4,2.5,2.45},{0.15})", gives: 2.3 },
    sources: ["iso660", "aocsCd3d"],
  },
);
