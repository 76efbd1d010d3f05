/** The window Filter: rows that hold some of a column's words, or figures between two limits. */
import { counted } from "../../sheet/counted";
import { isRefused } from "../../sheet/refusal";
import type { Criterion } from "../../xlsx";
import { doFilter, filterBlock, shownIn } from "../filtering/do-filter";
import { type Bench, selected } from "./bench";
import { made } from "./made";
import { field, labelled, panel, press } from "./panel";

/** Words that are listed: more are no list to choose from. */
const most = 200;

export function showAll(bench: Bench): void {
  const { cells, injector } = bench.grid;
  const place = selected(bench)?.cell;
  if (!place) return;
  const block = filterBlock(cells, place);
  if (isRefused(block)) return bench.refuse(block.sentence);
  doFilter(injector, cells, block, place.column, undefined);
  bench.sayOfAct(`All ${counted(block.rows, "row")} show.`, "Filtered again.");
}

export function filter(bench: Bench): void {
  const { cells, injector } = bench.grid;
  const place = selected(bench)?.cell;
  if (!place) return;
  const block = filterBlock(cells, place);
  if (isRefused(block)) return bench.refuse(block.sentence);
  const { column } = place;
  const rows = Array.from({ length: block.rows }, (_, down) => ({
    ...place,
    row: block.row + down,
  }));
  const words = [...new Set(rows.map((row) => shownIn(cells, row)))].sort().slice(0, most);
  const heading = shownIn(cells, { ...place, row: block.row - 1 });
  const { body, close } = panel(bench, `Filter by ${heading}`);
  const ticks = words.map((word) => {
    const input = field("", "checkbox");
    input.checked = true;
    return { word, input };
  });
  const list = made("div", "");
  list.className = "tools-words";
  for (const { word, input } of ticks) {
    const tick = labelled(word === "" ? "nothing there" : word, input);
    tick.className = "tools-tick";
    list.append(tick);
  }
  const figures = rows.some((row) => typeof cells.value(row) === "number");
  const [atLeast, atMost] = [field("", "number"), field("", "number")];
  for (const input of [atLeast, atMost]) input.step = "any";
  const apply = (): void => {
    const limits = {
      ...(atLeast.value === "" ? {} : { atLeast: Number(atLeast.value) }),
      ...(atMost.value === "" ? {} : { atMost: Number(atMost.value) }),
    };
    const chosen = ticks.filter(({ input }) => input.checked).map(({ word }) => word);
    const criterion: Criterion =
      Object.keys(limits).length > 0
        ? { kind: "figures", ...limits }
        : { kind: "words", words: chosen };
    close();
    const shown = doFilter(injector, cells, block, column, criterion);
    bench.sayOfAct(
      `Filtered by ${heading}: ${counted(shown, "row")} of ${String(block.rows)} show. Show all rows, in the same menu, takes it away.`,
      "Filter undone.",
    );
  };
  body.append(
    ...(figures ? [labelled("At least", atLeast), labelled("At most", atMost)] : []),
    list,
    press("None of these", () => {
      for (const { input } of ticks) input.checked = false;
    }),
    press("Filter", apply, "submit"),
  );
  (figures ? atLeast : ticks[0]?.input)?.focus();
}
