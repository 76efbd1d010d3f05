/** Where a text stands on the sheets, as cells show it, in the order of reading. */
import type { CellPlace } from "../../sheet/area";
import { shownValue } from "../engine/formatted";
import type { WorkbookCells } from "../engine/workbook-cells";

const folded = (text: string): string => text.normalize("NFC").toLowerCase();

/** Does a cell show the text, or hold it, whatever its letters' size? */
function holds(cells: WorkbookCells, place: CellPlace, wanted: string): boolean {
  const value = cells.value(place);
  if (value === null) return false;
  if (folded(shownValue(value, cells.format(place))).includes(wanted)) return true;
  return typeof value !== "object" && folded(String(value)).includes(wanted);
}

/** On these sheets; rows and columns that are hidden are left out. */
export function findAll(
  cells: WorkbookCells,
  sheets: readonly string[],
  text: string,
): CellPlace[] {
  const wanted = folded(text);
  if (wanted === "") return [];
  return sheets.flatMap((sheet) => {
    const held = cells.names.sheet(sheet);
    const extent = cells.names.extent(sheet);
    if (!held || !extent) return [];
    const found: CellPlace[] = [];
    for (let row = extent.top; row <= extent.bottom; row += 1) {
      if (!held.getRowVisible(row)) continue;
      for (let column = extent.left; column <= extent.right; column += 1) {
        const place = { sheet, row, column };
        if (held.getColVisible(column) && holds(cells, place, wanted)) found.push(place);
      }
    }
    return found;
  });
}

/** Which of the found ones comes after a cell, round again; going back, which comes before. */
export function nextAfter(
  found: readonly CellPlace[],
  from: CellPlace,
  sheets: readonly string[],
  isBack = false,
): number {
  const rank = ({ sheet, row, column }: CellPlace): readonly number[] => [
    sheets.indexOf(sheet),
    row,
    column,
  ];
  const isAfter = (one: CellPlace, other: CellPlace): boolean => {
    const [a, b] = [rank(one), rank(other)];
    const at = a.findIndex((each, index) => each !== b[index]);
    return at >= 0 && (a[at] ?? 0) > (b[at] ?? 0);
  };
  if (!isBack) {
    const next = found.findIndex((each) => isAfter(each, from));
    return next >= 0 ? next : 0;
  }
  for (let index = found.length - 1; index >= 0; index -= 1) {
    const each = found[index];
    if (each && isAfter(from, each)) return index;
  }
  return found.length - 1;
}
