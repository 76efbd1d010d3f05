import { caution } from "../../core/batch/cautions";
import { catalyst } from "../../core/batch/catalyst";
import { acidValue, assayPercent, baseCharge, limitFfaPercent, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";

export const CATALYST = worksheetFunction(
  "CATALYST",
  "Grams of lye, as weighed, for a batch: the acid part and the reaction part together.",
  {
    oilMass,
    acidValue,
    base: base("The base of the lye."),
    assayPercent,
    baseCharge,
    limitFfaPercent,
  },
  (given) =>
    catalyst(
      given.oilMass,
      given.acidValue,
      given.base,
      given.assayPercent,
      given.baseCharge,
      given.limitFfaPercent,
    ),
  {
    result: "g as weighed",
    equation:
      "({oilMass} * {acidValue} / 56.1 * {base} + 10 * {oilMass} * {baseCharge}) / ({assayPercent} / 100)",
    notes: [
      "The acid part is counted in moles of acid. The old rule that takes it as the FFA fraction times the base charge gives one twenty-sixth of that at 7 g/L of KOH; at 2 % FFA half of the base for the reaction is then lost to the acid.",
      "Above the limit (5 % where none is given, commonly cited) no dose is given: read ROUTE first. Typing a higher limit says that you mean to go on.",
      caution("permission"),
    ],
    example: { formula: '=TITRE.CATALYST(100,5.61,"KOH",100,1)', gives: 1561.053 },
    sources: ["ciaaw", "vanGerpen"],
  },
);
