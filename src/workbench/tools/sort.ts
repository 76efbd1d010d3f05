/** Sorting from the button Sheet, with what was done or why not in a sentence. */
import { counted } from "../../sheet/counted";
import { isRefused } from "../../sheet/refusal";
import { doSort } from "../sorting/do-sort";
import type { Direction } from "../sorting/order";
import { planSort } from "../sorting/plan-sort";
import { type Bench, selected } from "./bench";

const runs: Readonly<Record<Direction, string>> = {
  up: "the smallest first",
  down: "the largest first",
};

export function sort(bench: Bench, direction: Direction): void {
  const { grid } = bench;
  const place = selected(bench)?.cell;
  if (!place) return;
  const { cells, holding, guard, lists } = grid;
  const plan = planSort({ cells, holding, fixed: guard.fixed, lists }, place, direction);
  if (isRefused(plan)) {
    bench.refuse(plan.sentence);
    return;
  }
  const { block } = plan;
  const heading = cells.value({ ...place, row: block.row - 1 });
  const by = typeof heading === "string" ? heading : "this column";
  const isMoved = doSort(grid.injector, cells, plan);
  const rows = counted(block.rows, "row");
  if (isMoved)
    bench.sayOfAct(
      `Sorted by ${by}, ${runs[direction]}: ${rows}. Undo takes it back.`,
      "Sort undone.",
    );
  else bench.say(`The ${rows} stand in that order already, by ${by}, ${runs[direction]}.`);
}
