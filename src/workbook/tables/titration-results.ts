/** The calculated columns of `Titrations`: what the readings come to, and what that is worth. */
import { worthFormula } from "../record/worth";
import { calculated, type Column } from "./column";
import {
  bench,
  blanks,
  masses,
  one,
  sampleByHeading,
  titres,
  usual,
  usualHeadings,
  worthHeading,
} from "./titration-cells";

export const titrationResults: readonly Column<unknown>[] = [
  calculated(
    "Corrected titre mL",
    "0.000",
    "Mean titre less mean blank, mL.",
    `TITRE.CORRECTED(${titres},${blanks})`,
  ),
  calculated(
    "Acid value mg KOH/g",
    "0.00",
    "Mean of each titre's own acid value.",
    `TITRE.MEANACIDVALUE(${bench})`,
  ),
  calculated(
    "FFA %",
    "0.00",
    "The same acid as percent oleic, for display.",
    `TITRE.FFAFROMACIDVALUE(${one("Acid value mg KOH/g")})`,
  ),
  {
    ...calculated(
      "± FFA %",
      "0.00",
      "Half the width of the 95 % interval of % FFA.",
      `TITRE.FFAUNCERTAINTY(${bench},${one("Read to mL")},${one("Weighed to g")},${one("Titrant ± %")},,,${one("Burette ± %")},${usual})`,
    ),
    mayLack: true,
  },
  calculated(
    "Verdict",
    "General",
    "What the titres are worth, and what to do next.",
    `TITRE.VERDICT(${titres},${one("Read to mL")},,${masses},${blanks},${usual})`,
    60,
  ),
  calculated(
    worthHeading,
    "General",
    "Good, usable, near zero or not yet, and why.",
    worthFormula({
      acidValue: one("Acid value mg KOH/g"),
      verdict: one("Verdict"),
      titres: `COUNTIF(${titres},">0")`,
      usualScatter: one(usualHeadings[0]),
      usualFreedom: one(usualHeadings[1]),
      ffa: one("FFA %"),
      doubt: one("± FFA %"),
      titrantPercent: one("Titrant ± %"),
      sampleBy: one(sampleByHeading),
    }),
    40,
  ),
];
