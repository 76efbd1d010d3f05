/** Whole rows and columns inserted and deleted from the button Sheet: where cells are selected. */
import type { StructuralAct } from "../../xlsx";
import { type Bench, selected } from "./bench";

export type Wish = "rows above" | "rows below" | "no rows" | "columns before" | "no columns";

function actFor(wish: Wish, bench: Bench): StructuralAct | undefined {
  const found = selected(bench);
  const area = found?.areas.at(-1);
  if (!found || !area) return undefined;
  const { sheet } = found.cell;
  const { row, column, rows, columns } = area;
  switch (wish) {
    case "rows above":
      return { do: "insert-rows", sheet, before: row, count: rows };
    case "rows below":
      return { do: "insert-rows", sheet, before: row + rows, count: rows };
    case "no rows":
      return { do: "delete-rows", sheet, first: row, count: rows };
    case "columns before":
      return { do: "insert-columns", sheet, before: column, count: columns };
    case "no columns":
      return { do: "delete-columns", sheet, first: column, count: columns };
  }
}

export function changeLines(bench: Bench, wish: Wish): void {
  const act = actFor(wish, bench);
  if (act) bench.grid.guard.acts?.(act);
}
