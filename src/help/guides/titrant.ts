/** Making a titrant by weighing, and learning its real strength. */
import { cautionsOf, type Guide, heading, points, steps, text, worked } from "./guide";

export const titrant: Guide = {
  file: "titrant.html",
  title: "Making and standardising titrant",
  lead: "Every acid value is only as good as the strength of the titrant: make it, then measure what you made.",
  parts: [
    cautionsOf("making titrant"),
    heading("Weigh and make up"),
    text(
      "For one litre of 0.1 mol/L from KOH of 90 %. The assay is on the label: KOH is sold at 85 to 92 %, since it holds water; NaOH at 97 to 99 % when fresh (commonly cited).",
    ),
    worked({
      formula: '=TITRE.TITRANTMASS(0.1,1,"KOH",90)',
      shows: "6.234",
      unit: "g",
      byHand: "0.1 × 1 × 56.1053 ÷ 0.9",
    }),
    steps(
      "Weigh quickly, into a dry beaker of glass or plastic: the pellets draw water and carbon dioxide out of the air.",
      "Add them to the solvent (water or alcohol) a few at a time. It gets hot: let it cool.",
      "Make up to the mark at room temperature, mix well, and note the date and the temperature on the bottle.",
    ),
    text("If you weighed 6.20 g instead, nothing is lost, as long as you write 6.20:"),
    worked({
      formula: '=TITRE.MOLARITY(6.2,1,"KOH",90)',
      shows: "0.09946",
      unit: "mol/L",
      byHand: "6.2 × 0.9 ÷ 56.1053 ÷ 1",
    }),
    heading("Measure its strength"),
    text(
      "Potassium hydrogen phthalate (KHP) is a solid acid that can be weighed exactly. Dry it two hours at about 110 C and let it cool in a dry place (common practice, no source). Weigh 0.5 g of it to 0.001 g, dissolve it in water, titrate to the first lasting pink with phenolphthalein, and take off a blank of the same water.",
    ),
    worked({
      formula: "=TITRE.MOLARITYFROMKHP(0.5105,25.05)",
      shows: "0.09979",
      unit: "mol/L",
      byHand: "0.5105 ÷ 204.2223 ÷ 25.05 × 1000",
    }),
    points(
      "The balance decides how well: 0.51 g on one that shows 0.01 g is known to ±1.6 % (1.96 × 0.01 ÷ √6 ÷ 0.51), on one that shows 0.001 g to ±0.16 %. With the coarse one weigh 5.1 g, make it up to 250 mL and titrate 25 mL of that: ±0.16 % again, beside what flask and pipette are off (common practice, no source).",
      "Do it three times and use the mean: [SPREAD](spread.html) shows how well they agree.",
      "In the pane, choose _Checked against KHP_ in the titrant step, and it works out the strength.",
      "A strength from a label, or worked out from the assay on one, may be off by several percent: lye takes up water. Say so under _Accurate to ±_, and the ± of the result counts it.",
    ),
    heading("Warm days"),
    text(
      "A titrant in alcohol expands by about 0.11 % for each degree (EN 14104, note). Set at 20 C and read at 28 C, 2.45 mL would have been:",
    ),
    worked({
      formula: '=TITRE.TEMPERATURECORRECTED(2.45,28,20,"alcohol")',
      shows: "2.428",
      unit: "mL",
      byHand: "2.45 × (1 − 0.0011 × (28 − 20))",
    }),
    heading("Keep it"),
    points(
      "Tightly closed, in plastic, away from light, with its strength and the day it was measured (common practice, no source).",
      "Keep each check in the table _Titrants_, with _Keep this titrant in Titrants_ in the titrant step: after three its own line says when it is old, and no number of days does ([Over time](over-time.html)). Measure it at once when a known oil comes out differently (common practice, no source).",
    ),
  ],
};
