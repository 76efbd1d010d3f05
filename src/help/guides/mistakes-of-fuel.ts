/** Mistakes of the finished fuel: its soap, its acid, what is judged too early. */
import type { Mistake } from "./guide";

export const mistakesOfFuel: readonly Mistake[] = [
  {
    title: "0.1 for 0.01 in the soap equation",
    wrong:
      "Some notes print 0.1 mol/L for the hydrochloric acid that is 0.01. 0.20 mL on 100 g of washed fuel:",
    right: "Type the strength on the bottle: 0.01 mol/L.",
    wrongFigure: {
      formula: '=TITRE.FUELSOAP({0.2},"neutralised",0.1,100,"NaOH")',
      shows: "60.89",
      unit: "mg/kg",
      byHand: "0.20 × 0.1 × 304.45 × 1000 ÷ 100",
    },
    rightFigure: {
      formula: '=TITRE.FUELSOAP({0.2},"neutralised",0.01,100,"NaOH")',
      shows: "6.089",
      unit: "mg/kg",
      byHand: "0.20 × 0.01 × 304.45 × 1000 ÷ 100",
    },
    costs: "Ten times the soap: fuel that is clean enough is washed again and again.",
  },
  {
    title: "Soap hides acid",
    wrong:
      "The acid value is titrated before the fuel is washed, while soap and free base are in it. 0.45 mL on 20 g:",
    right: "Wash first, then titrate. The same fuel, washed, takes 1.95 mL:",
    wrongFigure: {
      formula: "=TITRE.ACIDVALUE(0.45,0.1,20)",
      shows: "0.126",
      unit: "mg KOH/g",
      byHand: "56.1 × 0.1 × 0.45 ÷ 20",
    },
    rightFigure: {
      formula: "=TITRE.ACIDVALUE(1.95,0.1,20)",
      shows: "0.547",
      unit: "mg KOH/g",
      byHand: "56.1 × 0.1 × 1.95 ÷ 20",
    },
    costs: "Fuel that seemed far under the limit of 0.50 is above it. The titres are an example.",
  },
  {
    title: "Unwashed fuel is judged",
    wrong: "It reacted, so it is fuel. Of the oil has reacted:",
    right:
      "What has reacted says nothing of what is left in it. Unwashed, with 8014 mg/kg of potassium soap, it holds of potassium:",
    wrongFigure: {
      formula: "=TITRE.CONVERSION(0.24,0.02)",
      shows: "97.9",
      unit: "%",
      byHand: "100 × (1 − 0.22 ÷ 10.40)",
    },
    rightFigure: {
      formula: '=TITRE.FUELMETAL(8014,"KOH")',
      shows: "977.5",
      unit: "mg/kg",
      byHand: "8014 × 39.0983 ÷ 320.5583",
    },
    costs: "Nearly two hundred times the 5 mg/kg that EN 14214 and ASTM D6751 allow.",
  },
];
