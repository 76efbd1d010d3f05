/** Using the functions in a logbook that is already there. */
import { type Guide, heading, points, steps, text } from "./guide";

export const logbook: Guide = {
  file: "logbook.html",
  title: "Adopting a logbook",
  lead: "Keep the logbook you have: Titrebook looks at it, says what each column seems to be, and changes nothing until you have seen what and where.",
  parts: [
    heading("Before"),
    points(
      "Keep a copy of the file. It will not be needed, and you will sleep better.",
      "One row for each titration or each batch, one heading row, no merged cells: then the columns can be recognised.",
    ),
    heading("What is looked at"),
    text(
      "Headings, units and the figures themselves: a column called _Blank_ whose figures are larger than those of _Titre_ is asked about, not believed. You confirm or correct each guess. What you confirm is kept in a small table on a sheet you agreed to, where everybody can read it.",
    ),
    heading("What is added"),
    steps(
      "A **new** column beside yours, one formula for every row. Nothing is written into a column of yours.",
      "The plan is shown first: which cells, what is there now, what would be written.",
      "Then it is written as one step. One undo takes all of it back.",
    ),
    heading("What is found"),
    text(
      "The re-check compares what your logbook says with what its readings say, and names known mistakes with what each does to the dose: a blank left out, grams per litre taken for mol/L, a percentage of the wrong acid. See [popular mistakes](mistakes.html).",
    ),
    heading("By hand"),
    text(
      'A column of your own is as good: type the formula into the first row of a new column of the table, for example `=TITRE.DOSE([@[Titre 1]:[Titre 3]],[@Blank],[@Molarity],[@Mass],[@Oil],"KOH",90,0.765)`. Functions that spill, such as [BATCH](batch.html) and [SPREAD](spread.html), cannot stand inside a table: put them beside it.',
    ),
  ],
};
