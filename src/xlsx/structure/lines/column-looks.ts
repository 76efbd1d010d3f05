/** Widths and looks of columns where columns are put in or taken out. */
import type { Replacement } from "../../../sheet/formula/splice";
import { count, flag } from "../../xml/scan";
import { childrenOf, type Node } from "../../xml/tree";
import { tagOf, without } from "./in-place";
import type { Lines } from "./lines";

/** New columns are as wide as the one before them, if that is shown. */
export function keptColumns(part: string, list: Node, lines: Lines): Replacement[] {
  const columns = childrenOf(list, "col");
  const moved = columns.map((node) => {
    const [first, last] = [
      count(node, "min", 1) - 1,
      Math.min(count(node, "max", 1), lines.all) - 1,
    ];
    const isBefore = lines.isInserting && last === lines.at - 1 && !flag(node, "hidden");
    const span = isBefore ? ([first, last + lines.count] as const) : lines.span(first, last);
    return { node, span };
  });
  if (moved.every(({ span }) => !span)) return [without(list)];
  return moved.flatMap(({ node, span }) => {
    if (!span) return [without(node)];
    return tagOf(part, node, { min: String(span[0] + 1), max: String(span[1] + 1) });
  });
}
