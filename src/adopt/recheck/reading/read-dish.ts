/** The water of a row's oil by the dish: empty, with oil before heating and after it (core/fuel/water-measured.ts). */
import { lossOnHeating } from "../../../core/fuel/water-measured";
import { isProblem } from "../../../core/problem/problem";
import { quantity } from "../../../core/quantity/quantity";
import { columnOf, type LogbookMapping } from "../../recognising/mapping";
import type { SheetCells } from "../../recognising/sheet-cells";
import { roleCells } from "./role-cells";

export interface DishWater {
  readonly percent: number;
  /** What the digits of the three masses leave open, in %. */
  readonly doubt: number;
}

const roles = ["dish", "dishBefore", "dishAfter"] as const;

/** Undefined where a mass is missing, or the three make no water. */
export function dishReader(
  mapping: LogbookMapping,
  cells: SheetCells,
): (row: number) => DishWater | undefined {
  if (roles.some((role) => columnOf(mapping, role) === undefined)) return () => undefined;
  const { figureAt } = roleCells(mapping, cells);
  const [dishAt, beforeAt, afterAt] = roles.map(figureAt);
  return (row) => {
    const [dish, before, after] = [dishAt?.(row), beforeAt?.(row), afterAt?.(row)];
    if (!dish || !before || !after) return undefined;
    const loss = lossOnHeating(
      quantity("g", dish.value),
      quantity("g", before.value),
      quantity("g", after.value),
    );
    if (isProblem(loss)) return undefined;
    const open = before.halfDigit + after.halfDigit;
    return { percent: loss.toNumber(), doubt: (100 * open) / (before.value - dish.value) };
  };
}
