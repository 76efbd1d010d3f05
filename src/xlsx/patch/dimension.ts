/** The part of a sheet says which area its cells take; it must go on being true. */
import { areaName } from "../../sheet/cell-name";
import { readArea } from "../cell-address";
import { attribute } from "../xml/scan";
import { withAttribute } from "../xml/tag";
import { childOf, type Node } from "../xml/tree";
import { type Placed, within } from "./frame";
import type { WantedCells } from "./wanted";

export function grownDimension(text: string, frame: Node, wanted: WantedCells): Placed[] {
  const node = childOf(frame, "dimension");
  const now = node && readArea(attribute(node, "ref") ?? "");
  if (!node || !now) return [];
  let [top, left] = [now.row, now.column];
  let [bottom, right] = [now.row + now.rows - 1, now.column + now.columns - 1];
  for (const row of wanted.rowNumbers()) {
    for (const { column, plan } of wanted.inRow(row)) {
      if (plan.kind === "nothing") continue;
      top = Math.min(top, row);
      bottom = Math.max(bottom, row);
      left = Math.min(left, column);
      right = Math.max(right, column);
    }
  }
  const area = { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
  const tag = withAttribute(text.slice(node.start, node.openEnd), "ref", areaName(area));
  return [within({ start: node.start, end: node.openEnd, text: tag })];
}
