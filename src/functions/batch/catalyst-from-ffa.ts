import { caution } from "../../core/batch/cautions";
import { catalyst } from "../../core/batch/catalyst";
import { isProblem } from "../../core/problem/problem";
import { limits } from "../../core/reference/limits";
import { acidValueFromFfa } from "../../core/titration/free-fatty-acid";
import { number } from "../arguments";
import { assayPercent, baseCharge, limitFfaPercent, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { base, requiredFattyAcid } from "../words";

export const CATALYSTFROMFFA = worksheetFunction(
  "CATALYSTFROMFFA",
  "CATALYST from a % FFA someone gave you, and the acid it was reported as.",
  {
    oilMass,
    ffaPercent: number(limits.ffaPercent, "% FFA", "Free fatty acid in percent: 1.97, not 0.0197."),
    fattyAcid: requiredFattyAcid,
    base: base("The base of the lye."),
    assayPercent,
    baseCharge,
    limitFfaPercent,
  },
  (given) => {
    const value = acidValueFromFfa(given.ffaPercent, given.fattyAcid);
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
      "({oilMass} * 10 * {ffaPercent} / {fattyAcid} * {base} + 10 * {oilMass} * {baseCharge}) / ({assayPercent} / 100)",
    notes: [
      "The acid must be named: 4 % as lauric is 5.6 % as oleic, and holds that much more acid.",
      "The limit compares the percentage as oleic, as CATALYST does.",
      caution("permission"),
    ],
    example: { formula: '=TITRE.CATALYSTFROMFFA(100,2,"lauric","KOH",100,1)', gives: 1561.053 },
    sources: ["ciaaw", "vanGerpen", "iso660"],
  },
);
