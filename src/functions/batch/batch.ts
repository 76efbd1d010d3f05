import { type Batch, batch } from "../../core/batch/batch";
import { shown } from "../../core/exact/rounding";
import { isProblem } from "../../core/problem/problem";
import type { AcidValue, Kilogram } from "../../core/quantity/quantity";
import {
  acidValue,
  assayPercent,
  baseCharge,
  limitFfaPercent,
  molarRatio,
  oilMass,
} from "../common";
import type { ResultTable } from "../answer";
import { worksheetFunction } from "../define";
import { base, oil } from "../words";
import { cautionRows } from "./caution-rows";

const rows = (oilMass: Kilogram, value: AcidValue, made: Batch): ResultTable => {
  const oilAt = `at ${shown(made.oilVolumeAt)} C`;
  return [
    ["Oil", oilMass, "kg"],
    ["Acid value", value, "mg KOH/g"],
    ["FFA as oleic", made.ffa, "%"],
    ["Methanol", made.methanolVolume, "L at 20 C"],
    ["Methanol", made.methanol, "kg"],
    ["Methanol, of the oil's volume", made.methanolVolumePercent, `% ${oilAt}`],
    ["Base for the acid, pure", made.pureForAcid, "g"],
    ["Base for the reaction, pure", made.pureForReaction, "g"],
    ["Catalyst, as weighed", made.catalyst, "g"],
    ["Catalyst, as weighed, per litre of oil", made.catalystPerLitre, `g/L ${oilAt}`],
    ["Methanol brought by a methoxide solution", made.methanolBrought, "L at 20 C"],
    ["Methanol still to add", made.methanolToAdd, "L at 20 C"],
    ["Soap from the acid", made.soap, "kg"],
    ["Water from the acid", made.waterFromAcid, "kg"],
    ["Water from base and methanol", made.waterFromBase, "kg"],
    ["Water in the lye, at most", made.waterInLye, "kg"],
    ["Biodiesel, at most", made.biodiesel, "kg"],
    ["Glycerol, at most", made.glycerol, "kg"],
    ["Route", made.route, ""],
    ...cautionRows("dosing"),
  ];
};

export const BATCH = worksheetFunction(
  "BATCH",
  "The whole weigh-out of a batch: methanol, catalyst, soap, water, products, route and cautions.",
  {
    oilMass,
    acidValue,
    base: base("The base of the lye."),
    assayPercent,
    baseCharge,
    molarRatio,
    oil,
    limitFfaPercent,
  },
  (given) => {
    const { oilMass, acidValue, base, baseCharge, molarRatio, oil } = given;
    const assay = given.assayPercent;
    const limitFfa = given.limitFfaPercent;
    const made = batch({ oilMass, acidValue, base, assay, baseCharge, molarRatio, oil, limitFfa });
    return isProblem(made) ? made : rows(oilMass, acidValue, made);
  },
  {
    result: "a table: label, amount, unit",
    equation:
      "({oilMass} * {acidValue} / 56.1 * {base} + 10 * {oilMass} * {baseCharge}) / ({assayPercent} / 100)",
    notes: [
      "A methoxide of assay under 50 % is a solution, and the rest of it is methanol: that much less is added.",
      "Biodiesel and glycerol are what the reaction could give at most; soap, washing and unreacted oil take their share.",
      "Left out, the ratio is 6 to 1: twice what the reaction takes (Freedman 1984, commonly cited).",
      "Cautions stand in the last rows.",
    ],
    example: { formula: '=INDEX(TITRE.BATCH(100,5.61,"KOH",100,1),9,2)', gives: 1561.053 },
    sources: ["ciaaw", "freedman", "handbook", "codex"],
  },
);
