import { waterInLye } from "../../core/batch/batch";
import { pureForReaction, unlimitedCatalyst } from "../../core/batch/catalyst";
import { waterFromAcid, waterFromBase } from "../../core/batch/products";
import { waterOf } from "../../core/batch/water";
import { waterInWords } from "../../core/batch/water-words";
import { hundred, zero } from "../../core/exact/exact";
import { as } from "../../core/quantity/quantity";
import { limits } from "../../core/reference/limits";
import { number, optionalNumber } from "../arguments";
import { acidValue, assayPercent, baseCharge, oilMass } from "../common";
import { worksheetFunction } from "../define";
import { base } from "../words";

export const WATERBALANCE = worksheetFunction(
  "WATERBALANCE",
  "All the water of a batch: in the oil, from acid and base, in lye and methanol.",
  {
    oilMass,
    waterPercent: number(limits.waterPercent, "water", "Water in the oil, percent of its mass."),
    acidValue,
    base: base("The base of the lye."),
    assayPercent,
    baseCharge,
    methanolMass: optionalNumber(
      limits.methanolMass,
      "the methanol is taken to be dry",
      undefined,
      "Kilograms of methanol as it comes.",
    ),
    methanolWaterPercent: optionalNumber(
      limits.waterPercent,
      "the methanol is taken to be dry",
      undefined,
      "Water in the methanol, percent of its mass.",
    ),
  },
  (given) => {
    const { oilMass: oil, acidValue: value, base: lye, assayPercent: assay, baseCharge } = given;
    const methanol = given.methanolMass ?? zero;
    const found = waterOf(
      oil,
      given.waterPercent,
      {
        waterFromAcid: waterFromAcid(oil, value, lye),
        waterFromBase: waterFromBase(pureForReaction(oil, baseCharge), lye),
        waterInLye: waterInLye(unlimitedCatalyst(oil, value, lye, assay, baseCharge), lye, assay),
      },
      as("kg", methanol.times(given.methanolWaterPercent ?? zero).div(hundred)),
    );
    return [
      ["Water in the oil", found.inOil, "kg"],
      ["Water from the acid", found.fromAcid, "kg"],
      ["Water from base and methanol", found.fromBase, "kg"],
      ["Water in the lye, at most", found.inLye, "kg"],
      ["Water in the methanol", found.inMethanol, "kg"],
      ["All water", found.all, "kg"],
      ["All water, of the oil's mass", found.percent, "%"],
      ["In words", waterInWords(found), ""],
    ];
  },
  {
    result: "a table: label, amount, unit",
    equation:
      "{oilMass} * {waterPercent} / 100 + {oilMass} * {acidValue} / 56.1 * 0.018015 + base charge / {base} * 18.015 + lye * (100 - {assayPercent}) / 100 + {methanolMass} * {methanolWaterPercent} / 100",
    notes: [
      "ROUTE judges the oil alone; here stands what acid, base, lye and methanol bring besides. Water turns base and oil into soap.",
      "At most: what is not base in a lye is taken to be water, and all of the base charge to become methoxide. A methoxide makes no water, and what is not methoxide in it is methanol.",
    ],
    example: {
      formula: '=INDEX(TITRE.WATERBALANCE(100,0.05,5.61,"KOH",100,0.561053),6,2)',
      gives: 0.4103,
    },
    sources: ["ciaaw"],
  },
);
