/** Widths of columns: one element of the file may stand for many columns, and is parted as needed. */
import { limits } from "../limits";
import { refuse } from "../problem";
import { count } from "../xml/scan";
import { prefixed, withAttribute } from "../xml/tag";
import { childOf, childrenOf, type Node } from "../xml/tree";
import { intoSheet, type Placed, within } from "./frame";

/** Columns from `min` to `max`, counted from 1, and the tag that says how they are. */
interface Columns {
  readonly min: number;
  readonly max: number;
  readonly tag: string;
}

const retagged = ({ min, max, tag }: Columns): string =>
  withAttribute(withAttribute(tag, "min", String(min)), "max", String(max));

const widened = (tag: string, width: number): string =>
  withAttribute(withAttribute(tag, "width", String(width)), "customWidth", "1");

/** The columns of one element, those among them that get a width set apart. */
function parted(columns: Columns, wanted: readonly (readonly [number, number])[]): Columns[] {
  const parts: Columns[] = [];
  let from = columns.min;
  for (const [column, width] of wanted) {
    if (from < column) parts.push({ ...columns, min: from, max: column - 1 });
    parts.push({ min: column, max: column, tag: widened(columns.tag, width) });
    from = column + 1;
  }
  if (from <= columns.max) parts.push({ ...columns, min: from, max: columns.max });
  return parts;
}

export function refuseWidth(characters: number): void {
  if (!(characters >= 0 && characters <= limits.width)) {
    refuse({ code: "bad-width", given: characters });
  }
}

/** `widths` in characters, by column from 0. */
export function changedWidths(
  text: string,
  frame: Node,
  widths: ReadonlyMap<number, number>,
): Placed[] {
  if (widths.size === 0) return [];
  const list = childOf(frame, "cols");
  const wanted = [...widths]
    .map(([column, width]) => [column + 1, width] as const)
    .sort(([a], [b]) => a - b);
  const found = childrenOf(list, "col").map((node) => ({
    min: count(node, "min"),
    max: count(node, "max"),
    tag: text.slice(node.start, node.openEnd),
  }));
  const isIn = ([column]: readonly [number, number], { min, max }: Columns): boolean =>
    column >= min && column <= max;
  const free = wanted.filter((each) => !found.some((columns) => isIn(each, columns)));
  const own = `<${prefixed(frame.prefix, "col")} min="1" max="1"/>`;
  const columns = [
    ...found.flatMap((each) =>
      parted(
        each,
        wanted.filter((one) => isIn(one, each)),
      ),
    ),
    ...free.map(([column, width]) => ({ min: column, max: column, tag: widened(own, width) })),
  ].sort((a, b) => a.min - b.min);
  const name = prefixed(frame.prefix, "cols");
  const written = `<${name}>${columns.map(retagged).join("")}</${name}>`;
  if (!list) return [intoSheet(frame, "cols", written)];
  return [within({ start: list.start, end: list.end, text: written })];
}
