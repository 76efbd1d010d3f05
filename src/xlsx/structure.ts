/** Rows, columns and sheets of a workbook inserted, deleted, renamed and moved in its file. */
import type { Workbook } from "./model";
import { answer, type FileProblem } from "./problem";
import type { StructuralAct } from "./structure/act";
import { withLines } from "./structure/lines/with-lines";
import { isOfSheets, withSheets } from "./structure/sheets";

/** The results in the file stay as they were: whoever shows it works them out. */
export const restructured = (opened: Workbook, act: StructuralAct): Workbook | FileProblem =>
  answer(() => (isOfSheets(act) ? withSheets(opened, act) : withLines(opened, act)));
