import { caution } from "../../core/batch/cautions";
import { catalyst } from "../../core/batch/catalyst";
import { isProblem } from "../../core/problem/problem";
import { meanAcidValue } from "../../core/titration/mean-acid-value";
import { blanks } from "../blanks";
import {
  assayPercent,
  baseCharge,
  limitFfaPercent,
  molarity,
  oilMass,
  sampleMasses,
  titres,
} from "../common";
import { worksheetFunction } from "../define";
import { replicates } from "../pairing";
import { base } from "../words";

export const DOSE = worksheetFunction(
  "DOSE",
  "From bench readings to grams of lye, as weighed, in one formula.",
  {
    titres,
    blanks: blanks("required"),
    molarity,
    sampleMasses,
    oilMass,
    base: base("The base of the lye for the batch."),
    assayPercent,
    baseCharge,
    limitFfaPercent,
  },
  (given) => {
    const pairs = replicates(given.titres, given.sampleMasses);
    if (isProblem(pairs)) return pairs;
    const value = meanAcidValue(pairs, given.blanks, given.molarity);
    if (isProblem(value)) return value;
    return catalyst(
      given.oilMass,
      value,
      given.base,
      given.assayPercent,
      given.baseCharge,
      given.limitFfaPercent,
    );
  },
  {
    result: "g as weighed",
    equation:
      "({oilMass} * {molarity} * mean(({titres} - mean({blanks})) / {sampleMasses}) * {base} + 10 * {oilMass} * {baseCharge}) / ({assayPercent} / 100)",
    notes: [
      "The same as MEANACIDVALUE and then CATALYST, in one call: chains of add-in functions are slow to recalculate.",
      "The titrant's base does not enter: acid is counted in moles, so a KOH titrant may set a NaOH dose.",
      "Above the limit (5 % where none is given, commonly cited) no dose is given: read ROUTE first.",
      caution("permission"),
    ],
    example: {
      formula: '=TITRE.DOSE({2.4,2.5,2.45},{0.15},0.1,{10},100,"KOH",100,1)',
      gives: 1129.04219,
    },
    sources: ["iso660", "ciaaw", "vanGerpen"],
  },
);
