/** Exactly what is loaded from where, and what is kept where. */
import { type Guide, heading, points, table, text } from "./guide";

export const privacy: Guide = {
  file: "privacy.html",
  title: "Privacy",
  lead: "Your readings stay on your machine and in your workbook: Titrebook sends nothing to anybody.",
  parts: [
    heading("What is loaded"),
    table(
      ["Page", "From where it was opened", "From anywhere else"],
      ["the page in a browser", "its own files", "nothing"],
      ["the help", "its own files", "nothing"],
      [
        "the pane in the spreadsheet program",
        "its own files",
        "`https://appsforoffice.microsoft.com/lib/1/hosted/`: the program's runtime, from its maker",
      ],
      [
        "the functions",
        "`functions.js` and `functions.json`",
        "nothing; they calculate, and cannot ask for anything",
      ],
    ),
    text(
      "Each page states this as a content security policy, which the browser enforces: no other address can be reached, not even by mistake. The program's runtime would open a page of its maker's telemetry service inside the pane; the pane's policy forbids it. What the spreadsheet program itself reports to its maker is between you and the program's settings.",
    ),
    text(
      "Whoever hosts the files sees, like any web server, that they were asked for: an address, a time, a browser's name. Host them yourself and nobody else does ([hosting](hosting.html)).",
    ),
    heading("What is kept"),
    points(
      "What you type into the tasks of the pane, in the browser's own storage on this machine, so that nothing is lost in a crash: with the workbook it was typed beside, for the last thirty workbooks. _Discard_ takes a titration away; clearing the browser's data for this site takes all of it. In the spreadsheet program it is kept apart for each site it runs in.",
      "In the browser page, the workbooks you open or edit, in the browser's own storage: the last five, and every one that is in no file yet. The bar says where yours is; _Open_ lists them, and _Forget_ takes one away. A browser that is cleaned out loses them: what is to stay belongs in a file.",
      "What you record, in your workbook, after you have seen which cells.",
      "Which column is which in a logbook you adopted, in a table on a sheet you agreed to.",
      "No cookies, no account, no counter, no identifier.",
    ),
    heading("What to mind"),
    points(
      "A workbook in somebody's cloud is in somebody's cloud, with or without Titrebook.",
      "Names of operators and kitchens are personal or business data in many countries: a [copy with numbers only](sharing.html) still holds them.",
    ),
  ],
};
