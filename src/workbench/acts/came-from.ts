/** Where a cell stood before an act on rows, columns or sheets. */
import type { CellPlace } from "../../sheet/area";
import type { StructuralAct } from "../../xlsx";

/** A row or a column before; undefined where there was none. */
function lineBefore(act: StructuralAct, line: number): number | undefined {
  switch (act.do) {
    case "insert-rows":
    case "insert-columns":
      if (line < act.before) return line;
      return line < act.before + act.count ? undefined : line - act.count;
    case "delete-rows":
    case "delete-columns":
      return line < act.first ? line : line + act.count;
    default:
      return line;
  }
}

/** What a sheet was called. */
export const sheetBefore = (act: StructuralAct, sheet: string): string =>
  act.do === "rename-sheet" && sheet === act.name ? act.sheet : sheet;

const isOfRows = ({ do: what }: StructuralAct): boolean =>
  what === "insert-rows" || what === "delete-rows";

/**
 * @example cameFrom({ do: "insert-rows", sheet: "Log", before: 2, count: 1 }, { sheet: "Log", row: 3, column: 0 }) // its row is 2
 * @returns undefined for a cell that was not there
 */
export function cameFrom(act: StructuralAct, place: CellPlace): CellPlace | undefined {
  const sheet = sheetBefore(act, place.sheet);
  if (act.sheet !== sheet) return { ...place, sheet };
  const line = isOfRows(act) ? "row" : "column";
  const before = lineBefore(act, place[line]);
  return before === undefined ? undefined : { ...place, sheet, [line]: before };
}
