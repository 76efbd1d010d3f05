import { isProblem } from "../../core/problem/problem";
import { meanAcidValue } from "../../core/titration/mean-acid-value";
import { blanks } from "../blanks";
import { molarity, sampleMasses, titres } from "../common";
import { worksheetFunction } from "../define";
import { replicates } from "../pairing";

export const MEANACIDVALUE = worksheetFunction(
  "MEANACIDVALUE",
  "Mean of each replicate's own acid value, mg KOH/g.",
  { titres, blanks: blanks("required"), molarity, sampleMasses },
  (given) => {
    const pairs = replicates(given.titres, given.sampleMasses);
    return isProblem(pairs) ? pairs : meanAcidValue(pairs, given.blanks, given.molarity);
  },
  {
    result: "mg KOH/g",
    equation: "56.1 * {molarity} * mean(({titres} - mean({blanks})) / {sampleMasses})",
    notes: [
      "Use it when each sample was weighed on its own. Titres and masses pair by position; one mass serves all.",
    ],
    example: { formula: "=TITRE.MEANACIDVALUE({2.1,3.1},{0.1},0.1,{5,7.5})", gives: 2.244 },
    sources: ["iso660", "aocsCd3d"],
  },
);
