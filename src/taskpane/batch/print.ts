/** The batch as a sheet to print. */
import { isProblem } from "../../core/problem/problem";
import { exact } from "../../core/exact/exact";
import type { WeighOutRecord } from "../../workbook/weigh-out/weigh-out-record";
import { batchOf } from "./record";
import { routeOf } from "./route-of";
import { interval } from "./amount-text";
import type { Seen } from "./seen";

/** @returns undefined while there is no weigh-out */
export function printOf(seen: Seen, today: string): WeighOutRecord | undefined {
  const { draft, figures, working, mark } = seen;
  const made = batchOf(seen, today);
  const { mix, batch, halfWidth } = working;
  const sentence = routeOf(seen);
  if (!made || sentence === undefined || !mix || isProblem(mix) || !batch || isProblem(batch))
    return undefined;
  const toTarget = draft.lots.length === 2 && draft.picked.mixedBy === "target";
  return {
    batch: made,
    lots: mix.lots.map(({ recorded, percent }) => ({
      lot: recorded.lot,
      percent: exact(percent.toNumber()),
    })),
    oil: mix.lots[0]?.recorded.oil ?? "",
    target: toTarget ? figures.value("target") : undefined,
    between: halfWidth ? `between ${interval(batch.catalyst, halfWidth, mark)} g` : "",
    route: sentence,
    hasPounds: draft.picked.pounds === "yes",
  };
}
