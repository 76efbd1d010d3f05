/** A saved file read back: does each cell hold what was asked of it? */
import { cellName } from "../../sheet/cell-name";
import type { Cell, CellValue, Edit, SetCell } from "../../xlsx";
import { keyOf, type OpenedFile } from "./opened-file";

/** Errors newer than the format are held as #VALUE!. */
function isHeld(asked: CellValue, found: CellValue | undefined): boolean {
  if (typeof asked !== "object") return asked === (found ?? "");
  if (typeof found !== "object") return false;
  return found.error === asked.error || found.error === "#VALUE!";
}

function isAsAsked({ content }: SetCell, cell: Cell | undefined): boolean {
  switch (content.kind) {
    case "value":
      if (typeof content.value === "object" && "date" in content.value) return true;
      return cell?.formula === undefined && isHeld(content.value, cell?.value);
    case "formula":
      return (
        cell?.formula !== undefined &&
        (content.result === undefined
          ? cell.value === undefined
          : isHeld(content.result, cell.value))
      );
    case "result":
      return isHeld(content.value, cell?.value);
    case "nothing":
      return cell?.value === undefined && cell?.formula === undefined;
    default:
      return true;
  }
}

/** The first cell that does not hold what was asked, as a sheet and an address. */
export function notAsAsked(edits: readonly Edit[], saved: OpenedFile): string | undefined {
  const sheets = new Map(
    saved.sheets.map((sheet) => [
      sheet.name.toLowerCase(),
      new Map(sheet.cells.map((cell) => [keyOf(cell.row, cell.column), cell])),
    ]),
  );
  for (const edit of edits) {
    if (edit.do !== "set-cell") continue;
    const cell = sheets.get(edit.sheet.toLowerCase())?.get(keyOf(edit.row, edit.column));
    if (!isAsAsked(edit, cell)) return `${edit.sheet}!${cellName(edit.row, edit.column)}`;
  }
  return undefined;
}
