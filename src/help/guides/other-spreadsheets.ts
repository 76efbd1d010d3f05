/** The functions where there is no add-in: plain formulas everywhere, a pasted script in Google Sheets. */
import { type Guide, heading, points, steps, table, text } from "./guide";

export const otherSpreadsheets: Guide = {
  file: "other-spreadsheets.html",
  title: "In other spreadsheets",
  lead: "A partner copy holds plain formulas that every spreadsheet program knows; Google Sheets can also be given the functions themselves, as a script that is pasted once.",
  parts: [
    heading("Every program: the partner copy"),
    text(
      "LibreOffice, Google Sheets and all others open a [partner copy](sharing.html) and work it out by themselves: nothing to install, and nothing that goes stale. It is the way to choose when in doubt. Each function's page here shows its example in plain formulas.",
    ),
    heading("Google Sheets: the functions themselves"),
    steps(
      "Open [the script](../other/google-sheets/titrebook.js), select all of it (Ctrl+A, on the Mac Command+A) and copy it.",
      "In the spreadsheet: _Extensions_, _Apps Script_. Empty the editor and paste. Where a script of yours stands already, add a file for this one and leave yours as it is.",
      "Save it, and go back to the sheet. `=TITRE_ACIDVALUE(2.3,0.1,10)` shows 1.2903.",
    ),
    text(
      "The script stands in this one spreadsheet, and in copies of it. It only calculates: it asks for no permission and speaks to nobody. For a newer version, paste over the old one. To take it out, empty the editor.",
    ),
    heading("What differs there"),
    table(
      ["What", "In Excel", "In Google Sheets"],
      [
        "Names",
        "`TITRE.DOSE`",
        "`TITRE_DOSE`: a name there has no dot. Formulas of a workbook that comes from Excel are not renamed; hand on a partner copy.",
      ],
      [
        "Failures",
        "#N/A or #VALUE!, with a sentence",
        "#ERROR! for both; the note at the cell begins with #N/A (not there yet) or #VALUE! (wrong), then the sentence. So ISNA does not find them, and IFERROR does.",
      ],
      [
        "A cell with an error, as an argument",
        "arrives as an error",
        "arrives as its text; it is told apart, and named.",
      ],
      [
        "An empty cell",
        "not filled in",
        "arrives as an empty text, and means the same. A 0 still means not filled in.",
      ],
      [
        "A date",
        "a count of days",
        "arrives as a moment. Keep one time zone for the spreadsheet (_File_, _Settings_) and the script (_Project Settings_): else a day can become the one before.",
      ],
      [
        "Working out again",
        "when a cell it needs changes",
        "the same, kept until then; NOW and RAND are refused as arguments. Each call goes to a server and back and must answer within 30 seconds: a formula that does a whole row, such as `TITRE_DOSE`, is quicker than a chain.",
      ],
      ["The pane", "beside the sheet", "none"],
    ),
    heading("What was tried"),
    points(
      "The script, with every checked answer, in a bare JavaScript engine that has nothing but the language. It has not been tried in Google Sheets.",
      "What is said of Google Sheets is from its maker's pages on custom functions; that an error arrives as its text, and an empty cell as an empty one, is commonly reported.",
    ),
  ],
};
