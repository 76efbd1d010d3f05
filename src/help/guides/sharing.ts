/** What a partner without the add-in sees, and how to give them something that works. */
import { block, type Guide, heading, points, text } from "./guide";

export const sharing: Guide = {
  file: "sharing.html",
  title: "Sharing a workbook",
  lead: "A partner without Titrebook can read your workbook, and with a partner copy also recalculate it.",
  parts: [
    heading("The workbook as it is"),
    points(
      "It opens everywhere with the values it was saved with.",
      "Without the add-in, a cell with a TITRE function shows `_xldudf_TITRE_…` in the formula bar. As soon as that cell is worked out again it becomes #NAME?, and so does what depends on it. LibreOffice shows the figures that were saved, and #NAME? for words.",
      "When you get the file back, the pane finds such cells and offers to _Ask again_. Nothing is lost: the formulas are still there.",
      "Phones and tablets show values only: functions of add-ins do not run there.",
    ),
    heading("The partner copy"),
    text(
      "In the pane: _Share_, _Partner copy_. In Excel the copy opens as a new workbook, which you save under a name of your own; the browser page saves it as a file. Every TITRE function becomes the same arithmetic in plain formulas that every spreadsheet program knows; each function's page shows it. Verdicts, routes and tables follow too. The copy keeps the values, so it looks the same before anything is worked out again. The table of published checks stays as its values. A formula that has no plain form keeps its TITRE function and is listed, and so are columns that a new row does not fill by itself. Steps in between stand on a sheet _Workings_ that can be read. Your own file is not changed. Google Sheets can be given the functions too: [other spreadsheets](other-spreadsheets.html).",
    ),
    heading("The numbers-only copy"),
    text(
      "_Share_, _Numbers only_: formulas are dropped and values kept, for a record or for somebody who only reads.",
    ),
    heading("From the command line"),
    block(
      "npm run share -- logbook.xlsx for-a-partner.xlsx",
      "npm run share -- logbook.xlsx figures.xlsx --numbers",
    ),
    text(
      "A file that is there already is written over only with `--force`. A workbook with a password, of the old kind (.xls) or binary (.xlsb) is refused with a sentence that says what to save it as.",
    ),
  ],
};
