import { caution } from "../../core/batch/cautions";
import { afterPretreatment, pretreatment } from "../../core/batch/pretreatment";
import { limits } from "../../core/reference/limits";
import { usual } from "../../core/reference/defaults";
import { usualNumber } from "../arguments";
import { acidValue, assayPercent, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";
import { cautionRows } from "./caution-rows";

export const PRETREATMENT = worksheetFunction(
  "PRETREATMENT",
  "What an acid step takes: methanol, sulfuric acid, and the base that would cancel that acid.",
  {
    oilMass,
    acidValue,
    base: base("The base of the lye that follows the acid step."),
    assayPercent,
    acidAssayPercent: usualNumber(
      limits.assay,
      usual.acidAssay,
      "Assay of the sulfuric acid, in percent.",
    ),
  },
  (given) => {
    const { oilMass, acidValue, base, assayPercent, acidAssayPercent } = given;
    const step = pretreatment(oilMass, acidValue, base, assayPercent, acidAssayPercent);
    return [
      ["Free fatty acid", step.ffa, "kg"],
      ["Methanol", step.methanol, "kg"],
      ["Methanol", step.methanolVolume, "L at 20 C"],
      ["Sulfuric acid, as weighed", step.sulfuricAcid, "kg"],
      ["Sulfuric acid, as weighed", step.sulfuricAcidVolume, "mL"],
      ["Base that would cancel all of that acid, as weighed, at most", step.baseToCancel, "g"],
      ["Then", afterPretreatment, ""],
      ...cautionRows("acid step"),
    ];
  },
  {
    result: "a table: label, amount, unit",
    equation:
      "2.25 g of methanol and 0.05 g of sulfuric acid for each gram of {oilMass} * {acidValue} / 56.1 * 0.282468",
    notes: [
      "The amounts are commonly cited (Canakci and Van Gerpen 2001): 20 moles of methanol to one of acid, and 5 % of acid on acid.",
      "Aim: below 1 % FFA, best 0.5 to 1 % (same paper, commonly cited). Where it is not reached, or above 15 % to begin with (common practice, no source), a second step.",
      "Water stops the step: begin with dry oil, and take methanol and water off before a second step or the base (commonly cited).",
      "Sulfuric acid left in the oil counts as FFA in the next titration (ISO 660): right for the dose, too high to judge the step by. For that, settle or wash the acid out and dry the oil first.",
      "The base that would cancel all of that acid never comes on top of a dose from a new titration: the acid would be counted twice.",
      caution("sulfuricAcid"),
    ],
    example: {
      formula: '=INDEX(TITRE.PRETREATMENT(100,5.61,"KOH",100),1,2)',
      gives: 2.82468,
    },
    sources: ["canakci", "iso660", "ciaaw", "practice"],
  },
);
