/** A sheet renamed, moved or deleted in the file. */
import type { Workbook } from "../model";
import { refuse } from "../problem";
import { readAgain } from "../read-back";
import type { SheetAct, StructuralAct } from "./act";
import { deleteSheet } from "./sheets/delete";
import { moveSheet } from "./sheets/move";
import { refuseOtherwise } from "./sheets/proof";
import { renameSheet } from "./sheets/rename";

export const isOfSheets = (act: StructuralAct): act is SheetAct =>
  act.do === "rename-sheet" || act.do === "move-sheet" || act.do === "delete-sheet";

/** The new file, read back and found to be what was meant. A problem travels as an exception. */
export function withSheets(opened: Workbook, act: SheetAct): Workbook {
  if (opened.isProtected) refuse({ code: "sheets-locked" });
  const file = opened.file.fresh();
  switch (act.do) {
    case "rename-sheet":
      renameSheet(file, opened, act.sheet, act.name);
      break;
    case "move-sheet":
      moveSheet(file, opened, act.sheet, act.to);
      break;
    case "delete-sheet":
      deleteSheet(file, opened, act.sheet);
  }
  const after = readAgain(file.toBytes(), opened.file);
  refuseOtherwise(act, opened, after);
  return after;
}
