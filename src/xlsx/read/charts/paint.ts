/** How a series is painted: its colour, its line, its marks (ECMA-376 part 1, 20.1.2.3 and 20.1.8). */
import { namespaces } from "../../package/names";
import { attribute } from "../../xml/scan";
import { childOf, type Node } from "../../xml/tree";
import type { ChartSeries } from "../../file-chart";
import type { Theme } from "../colours";
import { valueOf } from "./parts";

/** Where a theme has the colours that drawings call so. */
const themed: Readonly<Record<string, number>> = {
  bg1: 0,
  lt1: 0,
  tx1: 1,
  dk1: 1,
  bg2: 2,
  lt2: 2,
  tx2: 3,
  dk2: 3,
  accent1: 4,
  accent2: 5,
  accent3: 6,
  accent4: 7,
  accent5: 8,
  accent6: 9,
};

const inDrawing = (node: Node | undefined, name: string): Node | undefined =>
  node?.children.find((child) => child.local === name && child.uri === namespaces.drawing);

const share = (colour: Node, name: string): number | undefined => {
  const written = Number(attribute(inDrawing(colour, name) ?? { attributes: {} }, "val") ?? NaN);
  return Number.isFinite(written) ? written / 100_000 : undefined;
};

/** Towards white or black, which is what a picture needs of a change in lightness. */
function changed(hex: string, colour: Node): string {
  const darker = share(colour, "lumMod") ?? share(colour, "shade") ?? 1;
  const lighter = share(colour, "lumOff") ?? 0;
  const channels = [0, 2, 4].map((at) => parseInt(hex.slice(at, at + 2), 16));
  return channels
    .map((channel) => Math.round(channel * darker + 255 * lighter))
    .map((channel) => Math.min(255, Math.max(0, channel)).toString(16).padStart(2, "0"))
    .join("");
}

function colourIn(fill: Node | undefined, theme: Theme): string | undefined {
  const colour = inDrawing(fill, "srgbClr") ?? inDrawing(fill, "schemeClr");
  if (!colour) return undefined;
  const value = attribute(colour, "val") ?? "";
  const hex = colour.local === "srgbClr" ? value : theme[themed[value] ?? -1];
  if (hex === undefined || !/^[\da-f]{6}$/i.test(hex)) return undefined;
  return `#${changed(hex.toLowerCase(), colour)}`;
}

const pixels = 9525;

type Paint = Pick<ChartSeries, "colour" | "isJoined" | "dash" | "width" | "mark">;

/** @param isArea its colour is that of what is filled, not of a line */
export function paintOf(series: Node, theme: Theme, isArea: boolean): Paint {
  const shape = childOf(series, "spPr");
  const line = inDrawing(shape, "ln");
  const marker = childOf(series, "marker");
  const ofLine = colourIn(inDrawing(line, "solidFill"), theme);
  const ofFill = colourIn(inDrawing(shape, "solidFill"), theme);
  const ofMark = colourIn(inDrawing(childOf(marker, "spPr"), "solidFill"), theme);
  const colour = isArea ? (ofFill ?? ofLine) : (ofLine ?? ofMark ?? ofFill);
  const isJoined = line === undefined || inDrawing(line, "noFill") === undefined;
  const dash = inDrawing(line, "prstDash");
  const width = Number((line && attribute(line, "w")) ?? NaN);
  const mark = valueOf(marker, "symbol");
  return {
    isJoined,
    ...(colour === undefined ? {} : { colour }),
    ...(dash ? { dash: attribute(dash, "val") ?? "solid" } : {}),
    ...(width > 0 ? { width: Math.min(8, width / pixels) } : {}),
    ...(mark === undefined ? {} : { mark }),
  };
}
