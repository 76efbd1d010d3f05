/** From a jar of oil to the grams of lye: one titration, start to end. */
import { caution } from "../../core/batch/cautions";
import {
  cautionList,
  cautionsOf,
  type Guide,
  heading,
  picture,
  points,
  steps,
  text,
  worked,
} from "./guide";

export const firstTitration: Guide = {
  file: "first-titration.html",
  title: "Your first titration",
  lead: "From three titres, a blank and a weighing to the grams of lye for the batch in hand.",
  parts: [
    text(
      "You need a burette or a syringe you can read, a balance, a titrant of known strength ([how to make one](titrant.html)), alcohol as the solvent (ethanol or 2-propanol), phenolphthalein as the indicator, and oil that is dry, settled and well mixed. The steps are common practice, no source; where you follow a standard, that standard wins.",
    ),
    cautionsOf("titrating"),
    heading("At the bench"),
    picture(
      "bench.svg",
      "A bench for one titration: burette, flask, balance, alcohol and indicator.",
    ),
    steps(
      "Warm the oil until it is clear, and stir it. A sample from the top of a drum says nothing about the drum.",
      "Titrate a **blank**: the same volume of the same solvent with the same drops of indicator, without oil. Or bring the solvent to the colour of the end point first; then the blank is the word `neutralised`. One or the other, never both.",
      "Weigh the oil, to the last digit that the balance shows. At an expected 1 % FFA and 0.1 mol/L, 28.2 g give a titre of 10 mL; 10 g will do for a first try.",
      "Dissolve it, add the same drops of indicator as in the blank, and titrate to the first colour that stays: 30 seconds by AOCS Ca 5a-40, 15 by EN 14104. The same shade as in the blank.",
      "Write down what you read, all digits, **before** you know whether you like it. Do it twice more.",
    ),
    picture(
      "end-point.svg",
      "An end point: straw yellow before, pink that goes again, the first pink that stays, and deep pink, which is too far.",
    ),
    heading("In the pane"),
    steps(
      "The first time, fill in _My bench_: titrant, burette step, balance step, lye. It is kept on a sheet of your workbook, and the other tasks begin from it. It can wait.",
      "Open _Titrate_. Go through titrant, oil, blank and replicates: Enter goes to the next field that wants something, and what you type is kept if the machine stops.",
      "Read what it says about the replicates. A reading it calls suspect is flagged, never dropped.",
      "Look at the result, then _Record_: what will be written is said first, cell by cell if you ask, and one undo takes the row back. _Next lot_ keeps titrant and blanks; _Batch of this lot_ goes on to its weigh-out.",
    ),
    picture("titrate.png", "The result, its uncertainty, and what that is made of."),
    heading("Or in cells"),
    text(
      "Ten grams of oil of lot NQ-41, KOH of 0.1 mol/L, titres 2.40, 2.50 and 2.45 mL, a blank of 0.15 mL; a batch of 100 L, KOH of 90 %, 7 g/L of pure KOH for the reaction (common practice, no source):",
    ),
    worked(
      {
        formula: "=TITRE.CORRECTED({2.4,2.5,2.45},{0.15})",
        shows: "2.30",
        unit: "mL",
        byHand: "(2.40 + 2.50 + 2.45) ÷ 3 − 0.15",
      },
      {
        formula: "=TITRE.ACIDVALUE(2.3,0.1,10)",
        shows: "1.2903",
        unit: "mg KOH/g",
        byHand: "56.1 × 0.1 × 2.3 ÷ 10",
      },
      {
        formula: "=TITRE.FFAFROMACIDVALUE(1.2903)",
        shows: "0.649",
        unit: "% as oleic",
        byHand: "1.2903 × 282 ÷ 561",
      },
      {
        formula: '=TITRE.OILMASS(100,"l",0.915)',
        shows: "91.5",
        unit: "kg",
        byHand: "100 × 0.915",
      },
      {
        formula: "=TITRE.CHARGEPERCENT(7,100,0.915)",
        shows: "0.765",
        unit: "% of the oil",
        byHand: "7 ÷ 9.15",
      },
      {
        formula: '=TITRE.CATALYST(91.5,1.2903,"KOH",90,0.765)',
        shows: "908.9",
        unit: "g of lye",
        byHand: "(91.5 × 1.2903 ÷ 56.1 × 56.1053 + 10 × 91.5 × 0.765) ÷ 0.9",
      },
    ),
    text(
      "One formula does all of it: [DOSE](dose.html). [BATCH](batch.html) gives the methanol and the rest of the weigh-out as well.",
    ),
    picture(
      "workbench.png",
      "The browser page: a selected cell, and beside it how it was worked out.",
    ),
    heading("Then"),
    picture("batch.png", "The batch task: the weigh-out, with what each figure is for."),
    points(
      "Above the limit you set, the allowed % FFA, no dose is given: [ROUTE](route.html) says which way such a lot can go.",
      caution("trial"),
      "How sure is the figure? [Reading the uncertainty](uncertainty.html).",
    ),
    heading("Cautions"),
    cautionList,
  ],
};
