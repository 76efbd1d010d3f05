/** What the ± means, where it comes from, and what to do about it. */
import { type Guide, heading, picture, points, text, worked } from "./guide";

export const uncertainty: Guide = {
  file: "uncertainty.html",
  title: "Reading the uncertainty",
  lead: "What the ± beside a result means, which bench step to improve first, and when to stop.",
  parts: [
    heading("What ± says"),
    text(
      "0.65 ± 0.07 % means: of 100 such intervals, worked with the same care, about 95 hold the true value: 95 to 97 in simulated titrations, 97 to 100 on a scale coarser than the scatter.",
    ),
    worked({
      formula: "=TITRE.FFAUNCERTAINTY({2.4,2.5,2.45},{0.15},0.1,{10},0.05,0.01,0.5)",
      shows: "0.072",
      unit: "% FFA",
      byHand:
        "0.6486 ÷ 2.3 × ((4.302653 × 0.05 × (1 ÷ 3 + 1) ^ 0.5) ^ 2 + 1.959964 ^ 2 × (0.05 ^ 2 ÷ 3 + 2.3 ^ 2 × (0.01 ^ 2 ÷ 600 + 0.005 ^ 2 ÷ 3))) ^ 0.5",
    }),
    text(
      "The titres stand in the first range, blanks in the second, then molarity and mass; 0.05 mL is what the burette is read to, 0.01 g what the balance shows, and the titrant may be off by 0.5 %.",
    ),
    heading("What it is made of"),
    text(
      "[BUDGET](budget.html) spills a line for each cause. Read the last column: the share of the ± squared. Here the single blank has 71 %, the scatter of the titres 24 %, the reading of both 5 %; titrant and weighing hardly count. So a better balance would change nothing, and a second blank brings ±0.072 down to ±0.044. The last line says just that.",
    ),
    heading("What it does not cover"),
    text(
      "Some things are wrong without anybody typing them. Simulated with one blank, a scatter of 0.03 mL and divisions of 0.05 mL, so many of 100 intervals still hold the true value; with nothing wrong 97 do:",
    ),
    points(
      "An end point seen 0.1 mL late, as in dark oil, while the blank stops right: 81 with three titres, 64 with five. More titres make it worse. A blank run to the same shade takes it out.",
      "A titrant 5 % off its label: 77; 10 % off: 31. Set it against KHP, and type what it may still be off.",
      "A syringe whose scale is 5 % off: 76. Weigh what it delivers, and type the percent.",
      "Titres that all happen to be equal: 82, since only the scale speaks. A record of your own titrations helps.",
      "A sample that was not like the drum, and a slip: no figure covers these.",
    ),
    heading("Your record knows your hand"),
    text(
      "Ten earlier titrations of three titres say more about your hand, your burette and your indicator than today's three can. With them, half of all ± stay below 4.5 % of the FFA instead of 6.8 %; with two titres below 4.7 % instead of 23.8 %; and one titre has a ± at all. A slip of 0.3 mL is found in 97 sets of 100, and 4 honest sets of 100 are called suspect or apart. If today scatters more than the record explains, today counts alone.",
    ),
    worked({
      formula: "=TITRE.USUALSCATTER({2.4,2.45,2.5;1.1,1.15,1.1;3,3,3.1},,,0.05)",
      shows: "0.047",
      unit: "mL",
      byHand: "((0.005 + 0.005 ÷ 3 + 0.02 ÷ 3) ÷ 6) ^ 0.5",
    }),
    heading("What three readings are worth"),
    worked({
      formula: "=TITRE.VERDICT({2.4,2.5,2.45},0.05)",
      shows: "The three agree within 0.10 mL",
      unit: "",
      byHand: "",
    }),
    worked({
      formula: "=TITRE.VERDICT({2.4,2.5,2.9},0.05)",
      shows: "The three lie 0.50 mL apart",
      unit: "",
      byHand: "",
    }),
    picture("suspect.png", "Five titres, one of them suspect: the pane asks, and drops nothing."),
    points(
      "`agrees`: within 0.15 mL or three divisions, whichever is more (common practice, no source), or within what your own record explains.",
      "`suspect`: one reading is too far from the others. Look for a cause: a bubble, a drop too many, a spill. If you find one, omit the reading and write the reason beside it.",
      'Apart: no one can say which reading is off, so there is no dose from them. At three, a fourth titre settles more than any test. "Best two of three" is not on offer: two picked because they agree look surer than they are.',
    ),
    heading("When to stop"),
    text(
      "Ask what the ± does to the dose. At 91.5 kg of oil, ±0.07 % FFA is ±14 g of KOH of 90 %, in a dose of 909 g. If your scale for lye is no better than that, more titres gain nothing; nor if the assay of the lye is not known better than to 1.4 %, since each percent of it is 10 g here. A label's assay seldom is, once the bag was open (common practice, no source).",
    ),
    worked({
      formula: '=TITRE.NEUTRALISER(91.5,0.1392,"KOH",90)',
      shows: "14.2",
      unit: "g, for 0.07 % FFA",
      byHand: "91.5 × 0.07 × 561 ÷ 282 ÷ 56.1 × 56.1053 ÷ 0.9",
    }),
    worked({
      formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",89,0.765)',
      shows: "919.2",
      unit: "g at 89 %, where 90 % takes 908.9",
      byHand: "(91.5 × 1.2903 ÷ 56.1 × 56.1053 + 10 × 91.5 × 0.765) ÷ 0.89",
    }),
  ],
};
