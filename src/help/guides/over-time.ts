/** What a record tells once there is one: scatter, blanks, titrants and a kept oil over time. */
import { type Guide, heading, points, text, worked } from "./guide";

export const overTime: Guide = {
  file: "over-time.html",
  title: "What changes over time",
  lead: "A record says what one day cannot: that a solvent has changed, a titrant has weakened, or a hand has got worse.",
  parts: [
    text(
      "_Over time_ in the pane reads the tables _Titrations_, _Titrants_ and _Fuel_ of the workbook, in the order of their dates. Each part says in a sentence whether anything is odd, draws it, and lists the figures. Rows without a date, and titrations with another burette or a titrant more than twice as strong or weak as the latest, are left out, and it says so. With too few figures it says how many more it wants.",
    ),
    heading("Scatter of each titration"),
    text(
      "The standard deviation of the titres of one row. Its limit is that of the s chart: for three titres 2.276 times your usual scatter, for two 2.606 times (factor B6; ISO 7870-2, NIST/SEMATECH e-Handbook 6.3.2.1). Rows whose titres lie so far apart that something happened do not widen it; Titrate leaves out the same. Above it something happened: look at that day.",
    ),
    heading("Blanks, and a kept oil"),
    text(
      "Both are control charts: the limits lie three sigma from the centre, and sigma comes from the steps between one value and the next ([CONTROL](control.html), NIST/SEMATECH e-Handbook 6.3.2.2). Nine in a row on one side, or six rising or falling, are flagged as well. Blanks of 0.10, 0.15, 0.10, 0.15 and 0.15 mL have their centre and their upper limit at:",
    ),
    worked(
      {
        formula: "=INDEX(TITRE.CONTROL({0.1,0.15,0.1,0.15,0.15}),2,2)",
        shows: "0.13",
        unit: "mL",
        byHand: "(0.1 + 0.15 + 0.1 + 0.15 + 0.15) ÷ 5",
      },
      {
        formula: "=INDEX(TITRE.CONTROL({0.1,0.15,0.1,0.15,0.15}),8,2)",
        shows: "0.230",
        unit: "mL",
        byHand: "0.13 + 3 × 0.0375 × 1.77245 ÷ 2",
      },
    ),
    points(
      "A blank that jumps: new solvent, new indicator, or a burette that was not rinsed.",
      "A kept oil: set a litre of one oil aside, cold and dark, and titrate it now and then under one lot. When its acid value moves, it is titrant, burette or hand (common practice, no source).",
    ),
    heading("The strength of a titrant"),
    text(
      "Each time a titrant is made or checked it may be kept as a row of _Titrants_: in the first step of _Titrate_, _Keep this titrant in Titrants_. From KHP readings the row works out strength and ± itself; else type what is stated. Titrate offers the latest of each bottle. From three checks on a line is drawn ([STRENGTHON](strengthon.html); JCGM 100, H.3): what it is today, and the day it leaves ±1 % of its first. No number of days makes a titrant old, but its own line. 0.1000, 0.0998 and 0.0996 mol/L ten days apart come, ten days later, to:",
    ),
    worked({
      formula: "=INDEX(TITRE.STRENGTHON({46000;46010;46020},{0.1;0.0998;0.0996},46030),1,2)",
      shows: "0.0994",
      unit: "mol/L",
      byHand: "0.1 − 0.00002 × 30",
    }),
    points(
      "A fresh bottle gets a new mark: a line runs through all rows of one mark.",
      "The band of the line is the scatter of the checks alone. What all of them share, a balance that is off or KHP that was damp, it cannot show.",
    ),
    heading("The fuel, batch by batch"),
    text(
      "Acid value, soap, sodium or potassium, and water of the finished fuel, the last look at each batch, beside what EN 14214 and ASTM D6751 allow. Rows of unwashed fuel are left out: its acid value judges nothing. What is flagged is what its own verdict calls _above_ ([AGAINSTLIMIT](againstlimit.html)).",
    ),
    heading("On a sheet"),
    text(
      "_Put these figures on a sheet_ shows first what it would write: a new sheet with the figures as they stand, CONTROL or STRENGTHON of the same cells beside them, and charts where the spreadsheet program draws them. The browser page draws none on a sheet, and says so. Undo takes all of it back.",
    ),
  ],
};
