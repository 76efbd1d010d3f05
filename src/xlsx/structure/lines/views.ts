/** How a sheet is looked at: its first cell, what is frozen, what is selected. */
import type { Replacement } from "../../../sheet/formula/splice";
import { readCellName } from "../../cell-address";
import { attribute } from "../../xml/scan";
import type { Node } from "../../xml/tree";
import { tagOf } from "./in-place";
import type { Lines } from "./lines";
import { nearAreas } from "./refs";

interface MovedView {
  readonly tags: readonly Replacement[];
  /** Panes and selections that there are no more. */
  readonly dropped: readonly Node[];
}

/** Frozen lines stay the ones they were, with those put in among or before them. */
function frozenLines(top: number, many: number, { isInserting, at, after, count }: Lines): number {
  const edge = top + many;
  if (isInserting) return at >= top && at < edge ? many + count : many;
  return many - Math.max(0, Math.min(edge, after) - Math.max(top, at));
}

const moved = (node: Node, lines: Lines): Record<string, string> => {
  const before = attribute(node, "topLeftCell");
  return before === undefined ? {} : { topLeftCell: nearAreas(before, lines) };
};

export function movedView(part: string, view: Node, lines: Lines): MovedView {
  const own = tagOf(part, view, moved(view, lines));
  const pane = view.children.find(({ local }) => local === "pane");
  if (!pane) return { tags: own, dropped: [] };
  const [split, other] = lines.axis === "row" ? ["ySplit", "xSplit"] : ["xSplit", "ySplit"];
  const many = Number(attribute(pane, split ?? "") ?? 0);
  const isFrozen = /^frozen/.test(attribute(pane, "state") ?? "");
  if (!isFrozen || !(many > 0)) {
    return { tags: [...own, ...tagOf(part, pane, moved(pane, lines))], dropped: [] };
  }
  const first = readCellName(attribute(view, "topLeftCell") ?? "A1");
  const left = frozenLines(first?.[lines.axis] ?? 0, many, lines);
  if (left > 0) {
    const now = { ...moved(pane, lines), [split ?? ""]: String(left) };
    return { tags: [...own, ...tagOf(part, pane, now)], dropped: [] };
  }
  const selections = view.children.filter(({ local }) => local === "selection");
  if (attribute(pane, other ?? "") === undefined) {
    return { tags: own, dropped: [pane, ...selections.filter((each) => attribute(each, "pane"))] };
  }
  const gone = lines.axis === "row" ? /^bottom/ : /Right$/;
  const now = {
    ...moved(pane, lines),
    [split ?? ""]: undefined,
    activePane: lines.axis === "row" ? "topRight" : "bottomLeft",
  };
  const dropped = selections.filter((each) => gone.test(attribute(each, "pane") ?? ""));
  return { tags: [...own, ...tagOf(part, pane, now)], dropped };
}
