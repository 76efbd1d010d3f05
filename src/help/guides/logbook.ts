/** Using the functions in a logbook that is already there. */
import { type Guide, heading, picture, points, steps, text } from "./guide";

export const logbook: Guide = {
  file: "logbook.html",
  title: "Adopting a logbook",
  lead: "Keep the logbook you have: Titrebook looks at it, says what each column seems to be, and changes nothing until you have seen what and where.",
  parts: [
    heading("Before"),
    points(
      "Keep a copy of the file, as before any change.",
      "One row for each titration or batch, and one row of headings above them: then the columns can be recognised.",
    ),
    heading("What each column is"),
    text(
      "Open _Logbook_ in the pane. Headings, units and the figures themselves say what a column seems to be, and why; a column called _Blank_ whose figures are larger than those of _Titre_ is asked about, not believed. You confirm or correct each guess. Words of your own are asked about once: how much one drum is, what an empty blank means, whether a charge is of pure lye or as weighed. If you wish, what you confirmed is written on a sheet, where everybody can read it, and is known next time.",
    ),
    picture(
      "columns.png",
      "An invented home-made logbook: what each column seems to be, for you to confirm.",
    ),
    heading("Columns that are added"),
    steps(
      "Choose what you want worked out, as TITRE functions or as plain formulas that need no add-in.",
      "It becomes a **new** column at the right end, with one formula for every row. Nothing is written into a column of yours.",
      "The exact cells are shown first: what is there now, and what would be written. It is written as one step, and one undo takes all of it back.",
    ),
    heading("Mistakes that are found"),
    text(
      "The re-check works every row out from its readings and sets it beside what the row says. It names known mistakes, with what each does to the dose in grams: a blank not subtracted, 0.1 % taken for 0.1 mol/L, an assay not applied, the FFA fraction times the base charge. Rows that hold words beside a figure, or whose question is still open, are listed as not checked. A report can be written on a sheet of its own. See [popular mistakes](mistakes.html).",
    ),
    picture("recheck.png", "What a re-check found in it, and what each mistake did to the dose."),
    heading("By hand"),
    text(
      'A column of your own is as good: type the formula into the first row of a new column of the table, for example `=TITRE.DOSE([@[Titre 1]:[Titre 3]],[@Blank],[@Molarity],[@Mass],[@Oil],"KOH",90,0.765)`. Functions that spill, such as [BATCH](batch.html) and [SPREAD](spread.html), cannot stand inside a table: put them beside it.',
    ),
  ],
};
