/** Where one is after an act, or after one was taken back. */
import { firstVisible, type OpenedFile } from "../file/opened-file";
import type { View } from "../grid/view";
import type { StructuralAct } from "../../xlsx";

/**
 * @param act of which the file comes: whichever way
 * @param before the sheets as they were, in their order
 */
export function viewAfter(
  view: View,
  act: StructuralAct | undefined,
  opened: OpenedFile,
  before: readonly string[],
): View {
  const { sheet } = view.place;
  const names = new Set(opened.sheets.map(({ name }) => name));
  const at = (place: View["place"]) => ({
    place,
    rows: 1,
    columns: 1,
    firstRow: 0,
    firstColumn: 0,
  });
  // a sheet that is there again
  if (act?.do === "delete-sheet" && names.has(act.sheet)) {
    return at({ sheet: act.sheet, row: 0, column: 0 });
  }
  if (names.has(sheet)) return view;
  const other = act?.do === "rename-sheet" ? [act.sheet, act.name] : [];
  const found = other.find((name) => names.has(name));
  if (found !== undefined) return { ...view, place: { ...view.place, sheet: found } };
  const beside = [...before.slice(before.indexOf(sheet) + 1), ...before].find(
    (name) => opened.sheets.find((each) => each.name === name)?.state === "visible",
  );
  return at({ sheet: beside ?? firstVisible(opened) ?? "", row: 0, column: 0 });
}
