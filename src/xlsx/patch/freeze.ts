/** Rows and columns that stay in view. */
import { cellName } from "../../sheet/cell-name";
import { refuse } from "../problem";
import { appending, inserting } from "../xml/insert";
import { prefixed } from "../xml/tag";
import { childOf, type Node } from "../xml/tree";
import { intoSheet, type Placed, within } from "./frame";

export interface Freeze {
  readonly rows: number;
  readonly columns: number;
}

function paneXml(prefix: string, { rows, columns }: Freeze): string {
  const split =
    (columns > 0 ? ` xSplit="${String(columns)}"` : "") +
    (rows > 0 ? ` ySplit="${String(rows)}"` : "");
  const corner = columns > 0 ? "Right" : "Left";
  const pane = rows > 0 ? `bottom${corner}` : "topRight";
  const at = cellName(rows, columns);
  return `<${prefixed(prefix, "pane")}${split} topLeftCell="${at}" activePane="${pane}" state="frozen"/>`;
}

export function frozen(
  sheet: string,
  text: string,
  frame: Node,
  wanted: Freeze | undefined,
): Placed[] {
  if (!wanted || wanted.rows + wanted.columns === 0) return [];
  const { prefix } = frame;
  const views = childOf(frame, "sheetViews");
  const view = childOf(views, "sheetView");
  if (childOf(view, "pane")) refuse({ code: "frozen-already", sheet });
  const pane = paneXml(prefix, wanted);
  if (view) {
    // A pane is the first thing in a view.
    const inView = view.isEmptyTag ? appending(text, view, pane) : inserting(view.openEnd, pane);
    return [within(inView)];
  }
  const name = prefixed(prefix, "sheetView");
  const made = `<${name} workbookViewId="0">${pane}</${name}>`;
  if (views) return [within(appending(text, views, made))];
  const list = prefixed(prefix, "sheetViews");
  return [intoSheet(frame, "sheetViews", `<${list}>${made}</${list}>`)];
}
