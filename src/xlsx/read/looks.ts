/** How cells look: the styles part, resolved to one look for each number a cell can give. */
import { limits } from "../limits";
import type { Border, Look } from "../model";
import { attribute, count, flag } from "../xml/scan";
import { childOf, childrenOf, type Node } from "../xml/tree";
import { Colours, type Theme } from "./colours";
import { builtInFormats } from "./number-formats";

type Part = Partial<Look>;

const isOn = (node: Node | undefined): boolean => node !== undefined && flag(node, "val", true);

function font(node: Node, colours: Colours): Part {
  const size = Number(attribute(childOf(node, "sz") ?? node, "val"));
  const colour = colours.of(childOf(node, "color"));
  const underline = childOf(node, "u");
  return {
    ...(isOn(childOf(node, "b")) ? { bold: true } : {}),
    ...(isOn(childOf(node, "i")) ? { italic: true } : {}),
    ...(underline && attribute(underline, "val") !== "none" ? { underlined: true } : {}),
    ...(isOn(childOf(node, "strike")) ? { struck: true } : {}),
    ...(size > 0 && size < 500 ? { size } : {}),
    ...(colour ? { colour } : {}),
  };
}

function fill(node: Node, colours: Colours): Part {
  const pattern = childOf(node, "patternFill");
  if (!pattern || attribute(pattern, "patternType") !== "solid") return {};
  const colour = colours.of(childOf(pattern, "fgColor"));
  return colour ? { fill: colour } : {};
}

const sides = ["left", "right", "top", "bottom"] as const;

function borders(node: Node, colours: Colours): Part {
  const found: Partial<Record<(typeof sides)[number], Border>> = {};
  for (const side of sides) {
    const edge = childOf(node, side);
    const line = edge && attribute(edge, "style");
    if (line === undefined || line === "none") continue;
    const colour = colours.of(childOf(edge, "color"));
    found[side] = colour ? { line, colour } : { line };
  }
  return Object.keys(found).length > 0 ? { borders: found } : {};
}

/** As deep as programs go. */
const mostIndent = 250;

function arrangement(xf: Node): Part {
  const alignment = childOf(xf, "alignment");
  const protection = childOf(xf, "protection");
  const horizontal = alignment && attribute(alignment, "horizontal");
  const vertical = alignment && attribute(alignment, "vertical");
  const indent = alignment ? count(alignment, "indent") : 0;
  return {
    ...(indent > 0 && indent <= mostIndent ? { indent } : {}),
    ...(horizontal && horizontal !== "general" ? { horizontal } : {}),
    ...(vertical && vertical !== "bottom" ? { vertical } : {}),
    ...(alignment && flag(alignment, "wrapText") ? { wraps: true } : {}),
    ...(protection && !flag(protection, "locked", true) ? { isUnlocked: true } : {}),
  };
}

/** One longer than a program takes is no format, and is not looked into. */
function formatIn(node: Node): string {
  const format = attribute(node, "formatCode") ?? "General";
  return format.length <= limits.format ? format : "General";
}

function formats(root: Node): (id: number) => string {
  const own = new Map(
    childrenOf(childOf(root, "numFmts"), "numFmt").map((node) => [
      count(node, "numFmtId"),
      formatIn(node),
    ]),
  );
  return (id) => own.get(id) ?? builtInFormats[id] ?? "General";
}

/** A look for each style number. A workbook without styles has one, the plain look. */
export function readLooks(root: Node | undefined, theme: Theme): Look[] {
  if (!root) return [{ format: "General" }];
  const colours = Colours.ofStyles(root, theme);
  const listed = (list: string, item: string, read: (node: Node, colours: Colours) => Part) =>
    childrenOf(childOf(root, list), item).map((node) => read(node, colours));
  const fonts = listed("fonts", "font", font);
  const fills = listed("fills", "fill", fill);
  const edges = listed("borders", "border", borders);
  const formatOf = formats(root);
  const looks = childrenOf(childOf(root, "cellXfs"), "xf").map((xf) => ({
    format: formatOf(count(xf, "numFmtId")),
    ...fonts[count(xf, "fontId")],
    ...fills[count(xf, "fillId")],
    ...edges[count(xf, "borderId")],
    ...arrangement(xf),
  }));
  return looks.length > 0 ? looks : [{ format: "General" }];
}
