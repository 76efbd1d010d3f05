import { limits } from "../../core/reference/limits";
import { molarityByWeighing } from "../../core/titration/titrant";
import { number } from "../arguments";
import { assayPercent } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";

export const MOLARITY = worksheetFunction(
  "MOLARITY",
  "Strength of a titrant made by weighing, mol/L.",
  {
    mass: number(limits.titrantMass, "mass", "Grams of base weighed in."),
    volume: number(limits.volume, "volume", "Litres of titrant made."),
    base: base("The base weighed in."),
    assayPercent,
  },
  (given) => molarityByWeighing(given.mass, given.volume, given.base, given.assayPercent),
  {
    result: "mol/L",
    equation: "{mass} * {assayPercent} / (100 * {base} * {volume})",
    notes: [
      "0.1 % w/v is not 0.1 mol/L: 1 g/L of KOH is 0.0178 mol/L, 1 g/L of NaOH is 0.0250 mol/L.",
      "Pellets take up water and carbon dioxide: a titrant made by weighing is known to its assay at best. Standardise it (MOLARITYFROMKHP).",
    ],
    example: { formula: '=TITRE.MOLARITY(5.61053,1,"KOH",90)', gives: 0.09 },
    sources: ["ciaaw"],
  },
);
