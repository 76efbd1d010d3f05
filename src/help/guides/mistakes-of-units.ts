/** Mistakes with units, with names, and with what is left out. */
import type { Mistake } from "./guide";

export const mistakesOfUnits: readonly Mistake[] = [
  {
    title: "Grams per litre taken for mol/L",
    wrong: '"1" for a titrant of 1 g of NaOH (98 %) in a litre.',
    right: "Work out its strength.",
    wrongFigure: {
      formula: "=TITRE.ACIDVALUE(2.3,1,10)",
      shows: "12.90",
      unit: "mg KOH/g",
      byHand: "56.1 × 1 × 2.3 ÷ 10",
    },
    rightFigure: {
      formula: '=TITRE.MOLARITY(1,1,"NaOH",98)',
      shows: "0.02450",
      unit: "mol/L",
      byHand: "1 × 0.98 ÷ 39.99676928 ÷ 1",
    },
    costs: "An acid value 41 times too high: a good lot is turned away.",
  },
  {
    title: "Millilitres of oil taken for grams",
    wrong: "10 mL of oil entered as 10 g.",
    right: "Weigh it; or use its density at its temperature.",
    wrongFigure: {
      formula: "=TITRE.ACIDVALUE(2.3,0.1,10)",
      shows: "1.290",
      unit: "mg KOH/g",
      byHand: "56.1 × 0.1 × 2.3 ÷ 10",
    },
    rightFigure: {
      formula: "=TITRE.ACIDVALUE(2.3,0.1,9.15)",
      shows: "1.410",
      unit: "mg KOH/g",
      byHand: "56.1 × 0.1 × 2.3 ÷ (10 × 0.915)",
    },
    costs: "8.5 % too little base for the acid.",
  },
  {
    title: "Figures for one base used with the other",
    wrong: "7 g/L, a figure for KOH, weighed out as NaOH.",
    right: "The same moles of NaOH are fewer grams. As percent of the oil's mass:",
    wrongFigure: {
      formula: "=TITRE.CHARGEPERCENT(7,100,0.915)",
      shows: "0.765",
      unit: "%",
      byHand: "7 ÷ 9.15",
    },
    rightFigure: {
      formula: "=TITRE.CHARGEPERCENT(4.99,100,0.915)",
      shows: "0.545",
      unit: "%",
      byHand: "7 × 39.99676928 ÷ 56.1053 ÷ 9.15",
    },
    costs:
      "40 % too much base: more soap, and an emulsion that is hard to wash (common practice, no source).",
  },
  {
    title: "Which gallon?",
    wrong: "25 gallons, bought in one country and read in another.",
    right: "Name it: `us_gal` or `uk_gal`. A bare gallon is refused.",
    wrongFigure: {
      formula: '=TITRE.OILMASS(25,"us_gal",0.915)',
      shows: "86.6",
      unit: "kg",
      byHand: "25 × 3.785411784 × 0.915",
    },
    rightFigure: {
      formula: '=TITRE.OILMASS(25,"uk_gal",0.915)',
      shows: "104.0",
      unit: "kg",
      byHand: "25 × 4.54609 × 0.915",
    },
    costs: "A fifth more oil than the catalyst was weighed for.",
  },
  {
    title: "Rounding before the end",
    wrong: "The dose is worked out from the 0.6 % that the cell shows.",
    right: "Point at the cell, or work from the acid value.",
    wrongFigure: {
      formula: '=TITRE.CATALYSTFROMFFA(91.5,0.6,"oleic","KOH",90,0.765)',
      shows: "899.1",
      unit: "g",
      byHand: "(10 × 91.5 × 0.6 × 56.1053 ÷ 282 + 10 × 91.5 × 0.765) ÷ 0.9",
    },
    rightFigure: {
      formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",90,0.765)',
      shows: "908.9",
      unit: "g",
      byHand: "(91.5 × 1.2903 ÷ 56.1 × 56.1053 + 10 × 91.5 × 0.765) ÷ 0.9",
    },
    costs: "Ten grams here. Round for display, never in between.",
  },
  {
    title: "A textbook that rounds in the middle",
    wrong:
      "A published answer for 0.5727 g of KHP and 24.70 mL is 0.11336 mol/L: 0.0028043 mol was rounded to 0.0028 first.",
    right: "Divide once, at the end.",
    wrongFigure: {
      shows: "0.11336",
      unit: "mol/L",
      byHand: "0.0028 × 1000 ÷ 24.7",
    },
    rightFigure: {
      formula: "=TITRE.MOLARITYFROMKHP(0.5727,24.7)",
      shows: "0.11353",
      unit: "mol/L",
      byHand: "0.5727 ÷ 204.2223 × 1000 ÷ 24.7",
    },
    costs: "0.15 % in every result of that titrant: little, and for nothing.",
  },
  {
    title: "A percentage without its acid",
    wrong: "A coconut oil's 0.46 %, reported as lauric acid, is read as oleic.",
    right: "Say which acid it was reported as; or ask for the acid value.",
    wrongFigure: {
      formula: '=TITRE.ACIDVALUEFROMFFA(0.46,"oleic")',
      shows: "0.915",
      unit: "mg KOH/g",
      byHand: "0.46 × 561 ÷ 282",
    },
    rightFigure: {
      formula: '=TITRE.ACIDVALUEFROMFFA(0.46,"lauric")',
      shows: "1.290",
      unit: "mg KOH/g",
      byHand: "0.46 × 561 ÷ 200",
    },
    costs: "29 % too little base for the acid.",
  },
  {
    title: "Best two of three",
    wrong:
      "The reading that does not agree is omitted for that reason alone. The mean of the other two:",
    right:
      "No dose from three that lie 0.60 mL apart: titrate a fourth. For comparison, the mean of all three:",
    wrongFigure: {
      formula: '=TITRE.CORRECTED({2.3,2.35},"neutralised")',
      shows: "2.325",
      unit: "mL",
      byHand: "(2.30 + 2.35) ÷ 2",
    },
    rightFigure: {
      formula: '=TITRE.CORRECTED({2.3,2.35,2.9},"neutralised")',
      shows: "2.517",
      unit: "mL",
      byHand: "(2.30 + 2.35 + 2.90) ÷ 3",
    },
    costs:
      "Two picked because they agree look surer than they are: their scatter comes out 2.4 times too small, and their mean is off by more, as a rule, than the mean of all three (worked out for readings that scatter by chance alone).",
  },
];
