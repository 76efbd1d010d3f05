/** The browser page day by day: begun, kept, rows, sorted, printed. */
import { type Guide, heading, points, steps, text } from "./guide";

export const browserPage: Guide = {
  file: "browser-page.html",
  title: "The browser page, day by day",
  lead: "A logbook to live in without a spreadsheet program: begin it, keep it, change its rows, find, sort, print.",
  parts: [
    heading("Begin"),
    steps(
      "Press _Begin my own logbook_, or _New_ in the bar. The tables are there, with nothing in them.",
      "Fill in _My bench_ in the pane, or leave it for later. It is kept on a sheet of the workbook.",
      "Record your first titration with _Titrate_, or type into the pale yellow cells. [Short answers](answers.html) has what people ask first.",
    ),
    heading("Keep"),
    points(
      "The browser keeps the open workbook as you change it, and opens it again. The bar says whether it is in a file or in this browser only.",
      "_Save_ (Ctrl+S) writes it into its file where the browser can, and otherwise hands out a new file whose name says when.",
      "_Open_ lists what this browser kept. A second tab on the same workbook says so, and never writes over the first.",
      "What you type into a task of the pane stays with the workbook that is open. Another workbook has its own, and this one's is there again when you come back to it.",
      "A browser that is cleaned out loses what is in no file. Keep a second copy somewhere else.",
    ),
    heading("Rows, columns, sheets"),
    points(
      "The button _Sheet_ has what can be done with the rows and columns you selected: put in, take out, sort, filter, find, fill down, number formats, lines, row height, print. The right button of the mouse has much of it too.",
      "A row put into a table gets its formulas. A row typed right below a table becomes part of it.",
      "Formulas, names, charts and formats everywhere in the workbook follow. Where formulas would lose what they refer to, you are asked first, with their number.",
      "A reference that stands as text, in INDIRECT, cannot follow: you are told how many there are.",
      "Double-click a sheet's name to rename it, drag it to move it; the menu of its tab deletes it.",
      "_Undo_ (Ctrl+Z) takes each of these back at one press. What was typed or changed before it then goes as one step, and _Redo_ (Ctrl+Y) does all of it again in its order. Nothing is undone past the opening of the workbook.",
      "What a file could not be told of is refused, in a sentence, before it is done: columns inside a table, a cut through cells that one formula fills, a sheet with a query or a pivot table on it.",
    ),
    heading("Sort, filter, find"),
    points(
      "Select a cell of the column to go by. Rows go whole, with their looks and notes; totals and rows not begun stay at the end.",
      "_Filter_ hides rows by words or by figures, and the file is told. _Show all rows_ brings them back.",
      "_Find_ (Ctrl+F) looks on this sheet or on all of them.",
      "A cell with a list shows an arrow: Alt and the down arrow open it. Other words may still be typed where the file allows them.",
    ),
    heading("Charts and paper"),
    points(
      "Lines, columns, bars and points that a file has are drawn in their places, from the cells as they are now. Other charts keep a frame and stay in the file.",
      "_Print this sheet_, under _Sheet_, makes pages as wide as the paper, headings on each. Printing from the browser's own menu prints the pane.",
    ),
    heading("On a telephone"),
    text(
      "_Hide pane_ and _Hide sheet_ give one of them the whole height. On a telephone _Text view_ is in _Sheet_. A finger drawn over the cells scrolls them; one that rests first selects.",
    ),
  ],
};
