/** Where the charts of a drawing lie on their sheet (ECMA-376 part 1, 20.5.2). */
import type { ChartAnchor, ChartCorner } from "../../file-chart";
import { limits } from "../../limits";
import { namespaces } from "../../package/names";
import { attribute, attributeOf } from "../../xml/scan";
import { childOf, descendants, type Node } from "../../xml/tree";

export interface Anchored {
  readonly anchor: ChartAnchor;
  readonly name: string;
  readonly description?: string;
  /** The relationship that leads to the chart's part. */
  readonly leadsBy: string;
}

/** English metric units in a pixel. */
const pixel = 9525;
/** No picture is larger: a sheet's highest row is 546 pixels. */
const most = 20_000;

const pixelsOf = (written: string | undefined): number => {
  const pixels = Number(written ?? NaN) / pixel;
  return Number.isFinite(pixels) ? Math.min(most, Math.max(0, pixels)) : 0;
};

function corner(node: Node | undefined): ChartCorner | undefined {
  if (!node) return undefined;
  const text = (name: string) => childOf(node, name)?.text.trim();
  const index = (name: string, end: number) =>
    Math.min(end - 1, Math.max(0, Math.floor(Number(text(name) ?? 0)) || 0));
  return {
    row: index("row", limits.rows),
    column: index("col", limits.columns),
    x: pixelsOf(text("colOff")),
    y: pixelsOf(text("rowOff")),
  };
}

function anchorOf(node: Node): ChartAnchor | undefined {
  const [from, to] = [corner(childOf(node, "from")), corner(childOf(node, "to"))];
  if (from && to) return { from, to };
  const extent = childOf(node, "ext");
  if (!extent) return undefined;
  const size = {
    width: pixelsOf(attribute(extent, "cx")),
    height: pixelsOf(attribute(extent, "cy")),
  };
  if (from) return { from, size };
  const place = childOf(node, "pos");
  const [x, y] = ["x", "y"].map((name) => pixelsOf(place && attribute(place, name)));
  return place ? { from: { row: 0, column: 0, x: x ?? 0, y: y ?? 0 }, size } : undefined;
}

const kinds = ["twoCellAnchor", "oneCellAnchor", "absoluteAnchor"];

/** One for each anchor: of several charts in a group, the first. */
export const anchoredIn = (drawing: Node): Anchored[] =>
  drawing.children.flatMap((node) => {
    if (!kinds.includes(node.local) || node.uri !== drawing.uri) return [];
    const frame = descendants(node, "graphicFrame")[0];
    const chart = frame && descendants(frame, "chart")[0];
    const leadsBy = chart && attributeOf(chart, namespaces.relationships, "id");
    const anchor = anchorOf(node);
    if (leadsBy === undefined || !anchor) return [];
    const named = descendants(frame as Node, "cNvPr")[0];
    if (named && attribute(named, "hidden") === "1") return [];
    const description = named && (attribute(named, "descr") ?? "");
    return [
      {
        anchor,
        leadsBy,
        name: (named && attribute(named, "name")) ?? "",
        ...(description ? { description } : {}),
      },
    ];
  });
