/** The batch as a sheet to print. */
import { isProblem } from "../../core/problem/problem";
import { exact } from "../../core/exact/exact";
import type { WeighOutRecord } from "../../workbook/weigh-out/weigh-out-record";
import { batchOf } from "./record";
import { routeOf } from "./route-of";
import { lotMark } from "../lots/lot-ticks";
import { withMark } from "../widgets/typed-number";
import { acidValueWords, lotWorths, notYet } from "./acid-worth";
import { interval } from "./amount-text";
import type { Mix } from "./mix";
import type { Seen } from "./seen";

/** What the acid is worth, short enough for the page: of several lots the word alone. */
function worthLine(seen: Seen, mix: Mix): string {
  const { mark } = seen;
  const figure = withMark(acidValueWords(mix), mark);
  const worths =
    mix.lots.length === 1
      ? lotWorths(seen).map(({ words }) => words)
      : mix.lots.flatMap(({ recorded }) =>
          recorded.worth ? [`Lot ${lotMark(recorded)}: ${recorded.worth.word}.`] : [],
        );
  return [`${figure}.`, ...worths, ...(notYet(seen) === "" ? [] : ["Used all the same."])].join(
    " ",
  );
}

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
      worth: recorded.worthShown,
    })),
    oil: mix.lots[0]?.recorded.oil ?? "",
    target: toTarget ? figures.value("target") : undefined,
    acidValue: exact(mix.acidValue.toNumber()),
    between: halfWidth ? `between ${interval(batch, halfWidth, mark)} g` : "",
    worth: worthLine(seen, mix),
    route: sentence,
    hasPounds: draft.picked.pounds === "yes",
  };
}
