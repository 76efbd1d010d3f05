/** A border with some of its sides changed, the rest as its owner wrote it. */
import type { LookChange } from "../patch/edits";
import { escapeAttribute } from "../xml/escape";
import { prefixed } from "../xml/tag";
import { childOf, type Node } from "../xml/tree";
import { storedColour } from "./font";

type Side = "left" | "right" | "top" | "bottom";
type Line = NonNullable<LookChange["borders"]>[Side];

/** The order in which the format lists them. */
const order = [
  "start",
  "end",
  "left",
  "right",
  "top",
  "bottom",
  "diagonal",
  "vertical",
  "horizontal",
];
const sides: readonly string[] = ["left", "right", "top", "bottom"];
/** The format has these in every border, drawn or not. */
const always: readonly string[] = [...sides, "diagonal"];

function sideXml(prefix: string, side: string, line: Line): string {
  const name = prefixed(prefix, side);
  if (!line) return `<${name}/>`;
  const colour = prefixed(prefix, "color");
  const given = line.colour ? ` rgb="${storedColour(line.colour)}"` : ' auto="1"';
  return `<${name} style="${escapeAttribute(line.line)}"><${colour}${given}/></${name}>`;
}

/** Undefined when nothing of the look concerns the border. */
export function changedBorder(
  text: string,
  own: Node | undefined,
  { borders }: LookChange,
  prefix: string,
): string | undefined {
  if (!borders) return undefined;
  const name = prefixed(prefix, "border");
  const parts = order.map((side) => {
    if (sides.includes(side) && side in borders)
      return sideXml(prefix, side, borders[side as Side]);
    const child = childOf(own, side);
    if (child) return text.slice(child.start, child.end);
    return always.includes(side) ? `<${prefixed(prefix, side)}/>` : "";
  });
  const open = own && !own.isEmptyTag ? text.slice(own.start, own.openEnd) : `<${name}>`;
  return `${open}${parts.join("")}</${name}>`;
}
