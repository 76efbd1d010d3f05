/** Where drawings are fastened: at the cells of their corners. */
import type { Replacement } from "../../../sheet/formula/splice";
import type { Node } from "../../xml/tree";
import { textOf } from "./in-place";
import type { Lines } from "./lines";

export type Fastened = "twoCell" | "oneCell" | "absolute";

const child = (node: Node | undefined, local: string): Node | undefined =>
  node?.children.find((each) => each.local === local);

/** `from` and `to` of an anchor, whatever their namespace. */
export function movedAnchor(anchor: Node, lines: Lines, fastened: Fastened): Replacement[] {
  if (fastened === "absolute") return [];
  const from = child(anchor, "from");
  const to = child(anchor, "to");
  const line = (corner: Node | undefined): Node | undefined =>
    child(corner, lines.axis === "row" ? "row" : "col");
  const [top, bottom] = [line(from), line(to)];
  if (!top) return [];
  const [first, last] = [Number(top.text), Number(bottom?.text ?? top.text)];
  const [now, end] = movedEnds(first, last, lines, fastened);
  const offset = child(from, lines.axis === "row" ? "rowOff" : "colOff");
  const isGone = lines.line(first) === undefined;
  return [
    ...(now === first ? [] : [textOf(top, String(now))]),
    // the line it began in is gone: it begins at the edge of the next one
    ...(isGone && offset && offset.text !== "0" && end > now ? [textOf(offset, "0")] : []),
    ...(bottom && end !== last ? [textOf(bottom, String(end))] : []),
  ];
}

/**
 * The lines of its corners now. What stands wholly in lines that are taken out keeps its size: a chart
 * of no height would be lost without a word.
 */
export function movedEnds(
  first: number,
  last: number,
  lines: Lines,
  fastened: Fastened,
): [number, number] {
  const now = lines.near(first);
  const isAllGone = lines.line(first) === undefined && lines.line(last) === undefined;
  if (fastened === "oneCell" || isAllGone) {
    return [now, Math.min(now + last - first, lines.all - 1)];
  }
  return [now, Math.max(now, lines.near(last))];
}
