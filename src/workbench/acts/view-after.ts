/** Where one is after an act, or after one was taken back. */
import { firstVisible, type OpenedFile } from "../file/opened-file";
import type { View } from "../grid/view";
import type { StructuralAct } from "../../xlsx";

/** @param act of which the file comes: whichever way */
export function viewAfter(view: View, act: StructuralAct | undefined, opened: OpenedFile): View {
  const { sheet } = view.place;
  const names = new Set(opened.sheets.map(({ name }) => name));
  if (names.has(sheet)) return view;
  const other = act?.do === "rename-sheet" ? [act.sheet, act.name] : [];
  const found = other.find((name) => names.has(name));
  const place = found
    ? { ...view.place, sheet: found }
    : { sheet: firstVisible(opened) ?? "", row: 0, column: 0 };
  const top = { rows: 1, columns: 1, firstRow: 0, firstColumn: 0 };
  return found ? { ...view, place } : { ...top, place };
}
