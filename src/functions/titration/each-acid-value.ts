import { isProblem } from "../../core/problem/problem";
import { eachAcidValue } from "../../core/titration/mean-acid-value";
import { blanks } from "../blanks";
import { molarity, sampleMasses, titres } from "../common";
import { worksheetFunction } from "../define";
import { replicateSlots } from "../pairing";
import { inShape } from "../shape";

export const EACHACIDVALUE = worksheetFunction(
  "EACHACIDVALUE",
  "Each replicate's own acid value, mg KOH/g, spilled in the shape of the titres.",
  { titres, blanks: blanks("required"), molarity, sampleMasses },
  (given) => {
    const slots = replicateSlots(given.titres, given.sampleMasses);
    if (isProblem(slots)) return slots;
    const values = eachAcidValue(slots, given.blanks, given.molarity);
    return isProblem(values) ? values : inShape(given.titres, values);
  },
  {
    result: "mg KOH/g, one for each titre; empty where there is none",
    equation: "56.1 * {molarity} * ({titres} - mean({blanks})) / {sampleMasses}",
    notes: ["It spills, so it cannot stand inside a table: put it beside one."],
    example: {
      formula: "=TITRE.EACHACIDVALUE({2.1,3.1},{0.1},0.1,{5,7.5})",
      gives: [[2.244, 2.244]],
    },
    sources: ["iso660", "aocsCd3d"],
  },
);
