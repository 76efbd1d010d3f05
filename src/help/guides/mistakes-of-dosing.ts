/** Mistakes with the blank, the dose and the percentage. */
import type { Mistake } from "./guide";

export const mistakesOfDosing: readonly Mistake[] = [
  {
    title: "The blank is left out",
    wrong: "The mean titre goes straight into the equation.",
    right: "Take off what the solvent alone uses.",
    wrongFigure: {
      formula: "=TITRE.ACIDVALUE(2.45,0.1,10)",
      shows: "1.374",
      unit: "mg KOH/g",
      byHand: "56.1 × 0.1 × 2.45 ÷ 10",
    },
    rightFigure: {
      formula: "=TITRE.ACIDVALUE(2.3,0.1,10)",
      shows: "1.290",
      unit: "mg KOH/g",
      byHand: "56.1 × 0.1 × (2.45 − 0.15) ÷ 10",
    },
    costs:
      "6.5 % too much acid here, and so too much lye for it. On a good oil the blank can be half of the titre (common practice, no source).",
  },
  {
    title: "The blank is taken off twice",
    wrong: "The solvent was brought to pink first, and a blank is taken off as well.",
    right: "The solvent was neutralised: the blank is the word `neutralised`.",
    wrongFigure: {
      formula: "=TITRE.CORRECTED({2.4,2.5,2.45},{0.15})",
      shows: "2.30",
      unit: "mL",
      byHand: "7.35 ÷ 3 − 0.15",
    },
    rightFigure: {
      formula: '=TITRE.CORRECTED({2.4,2.5,2.45},"neutralised")',
      shows: "2.45",
      unit: "mL",
      byHand: "7.35 ÷ 3",
    },
    costs: "The dose comes out short, and some acid eats catalyst that was meant for the reaction.",
  },
  {
    title: "FFA fraction times base charge",
    wrong:
      '"3 % FFA, so 3 % more of the 7 g/L": a rule in old notes, which multiplies a fraction of the oil by the lye.',
    right:
      "Count moles of acid: one of base for each. Grams of pure KOH for the acid, in a litre of oil (0.915 kg) at 3 %:",
    wrongFigure: { shows: "0.21", unit: "g/L", byHand: "0.03 × 7" },
    rightFigure: {
      formula: '=TITRE.NEUTRALISER(0.915,5.9681,"KOH",100)',
      shows: "5.46",
      unit: "g/L",
      byHand: "0.915 × 10 × 3 × 56.1053 ÷ 282",
    },
    costs:
      "5.25 g/L too little here: the acid gets one twenty-sixth of what it needs, and three quarters of all the lye goes into soap. With 7 g/L of KOH the rule is wrong by that same factor at every % FFA.",
  },
  {
    title: "The assay of the lye is forgotten",
    wrong: "Grams of pure KOH are weighed out of a bag of 90 %.",
    right: "Divide by the assay, once.",
    wrongFigure: {
      formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",100,0.765)',
      shows: "818.0",
      unit: "g",
      byHand: "91.5 × 1.2903 ÷ 56.1 × 56.1053 + 10 × 91.5 × 0.765",
    },
    rightFigure: {
      formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",90,0.765)',
      shows: "908.9",
      unit: "g",
      byHand: "(91.5 × 1.2903 ÷ 56.1 × 56.1053 + 10 × 91.5 × 0.765) ÷ 0.9",
    },
    costs:
      "A tenth too little base: a slow batch that may not finish (common practice, no source).",
  },
  {
    title: "A percentage typed as a fraction",
    wrong: "0.90 for ninety percent.",
    right: "Percent is percent: 90.",
    wrongFigure: {
      formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",0.9,0.765)',
      shows: "#VALUE!",
      unit: "",
    },
    rightFigure: {
      formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",90,0.765)',
      shows: "908.9",
      unit: "g",
      byHand: "(91.5 × 1.2903 ÷ 56.1 × 56.1053 + 10 × 91.5 × 0.765) ÷ 0.9",
    },
    costs: "Nothing: it is refused, with a sentence that says what to write.",
  },
];
